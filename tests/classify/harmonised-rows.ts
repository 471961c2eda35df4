import type { Classification } from '../../src/classify/classification.ts';
import { classify } from '../../src/classify/engine.ts';
import { harmonisedTable, openReference } from '../../src/draft/open-reference.ts';
import type { Formula } from '../../src/formula/constituent.ts';
import { expandFormula } from '../../src/formula/expand.ts';
import { findClass } from '../../src/notation/classes.ts';
import type { ProductRecord } from '../../src/record/product-record.ts';
import { only } from '../../src/reference/harmonised/choose-entry.ts';
import type { HarmonisedEntry } from '../../src/reference/harmonised/entry.ts';
import { readRecord, recordAround } from '../support/cases.ts';

/** Rows of CLP Annex VI Table 3 in force on a date, by index number and CAS number. */
export function rowsInForce(asOf: string): Map<string, HarmonisedEntry> {
  const latest = new Map<string, HarmonisedEntry>();
  for (const row of harmonisedTable().allRows()) {
    const key = `${row.index} ${row.cas ?? ''}`.trim();
    const present = latest.get(key);
    if (row.appliesFrom <= asOf && (!present || row.appliesFrom > present.appliesFrom)) latest.set(key, row);
  }
  return latest;
}

/** Health and environmental hazards; those of physics need tests of the substance in its form. */
export const calculated = ({ hazardClass }: { readonly hazardClass: string }): boolean =>
  findClass(hazardClass)!.kind !== 'physical';

interface Written {
  readonly code: string;
  readonly route: string | null;
  readonly effect: string | null;
}

const inWords = ({ code, route, effect }: Written, statement: string | null): string =>
  [
    code,
    code.startsWith('Acute') ? `(${route})` : effect && `(${effect})`,
    // The letters say more than the category.
    statement && /^H3[56]\d[a-zA-Z]/.test(statement) ? statement : null,
  ]
    .filter(Boolean)
    .join(' ');

/** What classification at 100 % gives besides the row (`+`) and what it does not give of it (`-`). */
export function changesOf(row: HarmonisedEntry, { hazards }: Pick<Classification, 'hazards'>): string[] {
  const own = new Set(row.hazards.filter(calculated).map(hazard => inWords(hazard, hazard.statement)));
  const found = new Set(
    hazards.filter(calculated).map(hazard => inWords(hazard, hazard.statements[0] ?? null)),
  );
  return [
    ...[...own].filter(hazard => !found.has(hazard)).map(hazard => `- ${hazard}`),
    ...[...found].filter(hazard => !own.has(hazard)).map(hazard => `+ ${hazard}`),
  ].sort();
}

/** Classifies one row under eu-clp at a percent, the rest being water. */
export type RowClassifier = (row: HarmonisedEntry, percent: number) => Classification;

/** Opens the classifier of rows: as a gas where the row is one, and thin enough to be aspirated. */
export async function classifierOfRows(asOf: string): Promise<RowClassifier> {
  const reference = await openReference('eu-clp', asOf);
  if (!reference.ok) throw new Error('no figures on that date');
  const made = new Map<string, { record: ProductRecord; formula: Formula }>();
  const mixture = (form: string, percent: number) => {
    const key = `${form} ${percent}`;
    let known = made.get(key);
    if (!known) {
      const substance = { name: 'substance', cas: '50-00-0', percent };
      const record = readRecord(
        recordAround({
          form,
          properties: { 'kinematic-viscosity-40C': '1 mm2/s' },
          formula: percent < 100 ? [substance, { name: 'water', amount: 'balance' }] : [substance],
        }),
      );
      const formula = expandFormula(record);
      if (!formula.ok) throw new Error('the formula does not expand');
      known = { record, formula: formula.value };
      made.set(key, known);
    }
    return known;
  };
  const isGas = ({ ate, hazards }: HarmonisedEntry): boolean =>
    ate.gas !== undefined || hazards.some(({ hazardClass }) => hazardClass.endsWith(' Gas'));
  return (row, percent) => {
    const { record, formula } = mixture(isGas(row) ? 'gas' : 'liquid', percent);
    return classify(record, formula, reference.value.basis, () => only(row));
  };
}
