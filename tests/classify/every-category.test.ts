import { describe, expect, it } from 'vitest';
import { hazardClasses, hazardCode } from '../../src/notation/classes.ts';
import { listedClass } from '../../src/notation/listed-class.ts';
import { openQuestion } from '../../src/notation/open-question.ts';
import { parseHazard } from '../../src/notation/parse-hazard.ts';
import type { BasisId } from '../../src/reference/basis.ts';
import { classifyLines } from '../support/cases.ts';

const sectionOf = { 'us-hcs': 'us', 'eu-clp': 'clp', 'un-ghs': 'ghs' } as const;
const formsOf = (name: string): readonly string[] =>
  /Gas$/.test(name)
    ? ['gas']
    : name === 'Aerosol'
      ? ['aerosol']
      : /Sol\.$|Self-heat|Dust/.test(name)
        ? ['solid']
        : ['liquid'];

const cases = hazardClasses.flatMap(entry =>
  entry.categories.flatMap(({ category }) =>
    (['us-hcs', 'eu-clp', 'un-ghs'] as const)
      .filter(basis => entry[sectionOf[basis]] !== null)
      .flatMap(basis => [50, 100].map(percent => ({ entry, category, basis, percent }))),
  ),
);

const written = (name: string, category: string): string => {
  const code = hazardCode(name, category);
  if (name === 'Acute Tox.') return `${code} (oral)`;
  return code === 'STOT SE 3' ? `${code} (narcotic effects)` : code;
};

/**
 * Every class and category of `hazard-classes.json` (CLP Annex VI Table 1.1 with those of UN GHS and 29 CFR 1910.1200) in
 * every basis that has the class: refused, classified, open, or told.
 */
describe('no category that a record may name vanishes', () => {
  it.each(cases)(
    '$entry.class $category at $percent % under $basis',
    async ({ entry, category, basis, percent }) => {
      const code = written(entry.class, category);
      const read = parseHazard(code);
      // A record that leaves open what a rule needs is refused, with the question.
      if (read.ok && openQuestion(read.value)) return;
      const lines = [
        { name: 'a', percent, hazards: [code], source: 'test' },
        ...(percent < 100 ? [{ name: 'water', amount: 'balance' }] : []),
      ];
      for (const form of formsOf(entry.class)) {
        const found = await classifyLines(lines, basis as BasisId, { form });
        const listed = listedClass(entry.class);
        const given = found.hazards.some(({ hazardClass }) => listedClass(hazardClass) === listed);
        const others = found.otherClasses.filter(({ class: name }) => name.startsWith(listed));
        const openWith = others.some(
          ({ outcome, because }) => outcome === 'insufficient-data' || because.kind === 'form',
        );
        // Limits that no share of 50 % reaches are reasons too: the ingredient is named, or its sum.
        const reasoned = others.some(
          ({ because }) => !['none', 'screening', 'nothing-counts', 'form'].includes(because.kind),
        );
        const told = found.warnings.some(({ id }) => id === 'category-not-in-basis');
        expect(given || openWith || reasoned || told).toBe(true);
        // What is given has its statement, for a label that says it.
        for (const hazard of found.hazards)
          if (
            hazard.hazardClass === entry.class &&
            !/G$|1\.6|Comb\. Dust/.test(hazard.code) &&
            entry.kind !== 'environmental'
          )
            expect([hazard.code, hazard.statements.length > 0]).toEqual([hazard.code, true]);
      }
    },
  );
});

describe('acute toxicity above 2,000 mg/kg under us-hcs', () => {
  // A.1.3.6.1(a): oral and dermal LD50 above 2,000 up to 5,000 mg/kg enter the sum.
  it('counts in the sum', async () => {
    const line = (name: string, percent: number, hazard: string) => ({
      name,
      percent,
      hazards: [hazard],
      source: 'test',
    });
    const found = await classifyLines(
      [line('a', 24, 'Acute Tox. 4 (oral)'), line('b', 76, 'Acute Tox. 5 (oral)')],
      'us-hcs',
    );
    // 100 / (24/500 + 76/2500) = 1275.5
    expect(found.ateMix.oral).toBeCloseTo(1275.5, 1);
    expect(found.hazards.map(({ code }) => code)).toEqual(['Acute Tox. 4']);
  });
});
