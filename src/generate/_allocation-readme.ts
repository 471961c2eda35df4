import type { AllocationFile, AllocationRow } from '../reference/label-data/allocation.ts';

const count = (rows: readonly AllocationRow[], keep: (row: AllocationRow) => boolean) =>
  rows.filter(keep).length;

/** README.md of the readings: how many rows agree, and which are open. */
export function allocationReadme({ rows, checkedOn }: AllocationFile): string {
  const differing = rows.filter(({ disagreements }) => disagreements);
  const onCodes = differing.filter(({ disagreements }) =>
    disagreements!.some(({ field }) => ['prevention', 'response', 'storage', 'disposal'].includes(field)),
  );
  const byConfidence = ['text-read', 'mapped', 'inferred', 'from-memory'].map(
    level => `| ${level} | ${count(rows, ({ confidence }) => confidence === level)} |`,
  );
  const open = rows.filter(
    ({ confidence, sources }) => confidence === 'from-memory' || sources.some(({ agrees }) => !agrees),
  );
  return `# Precautionary statements of 29 CFR 1910.1200 Appendix C, C.4

Generated from first-reading.json, second-reading.json and decisions.json. Do not edit.

C.4 is published as images. Two readings were made apart from each other and from different sources; each row of
us-hcs/allocation.json names the sources that agree with it and those that do not, and keeps what was not taken. Decided on
${checkedOn}. A person with the printed pages should check the open rows first.

| | rows |
|---|---|
| all rows | ${rows.length} |
| same statements, signal word, symbol and P codes in both readings | ${rows.length - onCodes.length} |
| P codes differ | ${onCodes.length} |
| only conditions or alternatives differ | ${differing.length - onCodes.length} |

| confidence | rows |
|---|---|
${byConfidence.join('\n')}

## P codes differ

${onCodes
  .map(
    ({ hazard, disagreements }) =>
      `- ${hazard}: ${disagreements!
        .filter(({ field }) => !field.includes(' of '))
        .map(
          ({ field, first, second, taken, why }) =>
            `${field} ${JSON.stringify(first)} or ${JSON.stringify(second)}; ${taken} taken. ${why}`,
        )
        .join(' ')}`,
  )
  .join('\n')}

## Open rows: a source disagrees, or from memory alone

${open
  .map(({ hazard, confidence, sources }) => {
    const against = sources.filter(({ agrees }) => !agrees).map(({ source }) => source);
    return `- ${hazard} (${confidence})${against.length > 0 ? `: not in agreement: ${[...new Set(against)].join('; ')}` : ''}`;
  })
  .join('\n')}
`;
}
