import { describe, expect, it } from 'vitest';
import { classify } from '../../src/classify/engine.ts';
import { openReference } from '../../src/draft/open-reference.ts';
import { expandFormula } from '../../src/formula/expand.ts';
import type { Hazard } from '../../src/notation/hazard.ts';
import type { PhysicalForm } from '../../src/record/product-record.ts';
import { only } from '../../src/reference/harmonised/choose-entry.ts';
import type { HarmonisedEntry } from '../../src/reference/harmonised/entry.ts';
import { readRecord, recordAround } from '../support/cases.ts';
import { rowsInForce } from './harmonised-rows.ts';

const asOf = '2026-11-25';

/** Classes that a basis does not have: its text names none. */
const without: Readonly<Record<string, readonly string[]>> = {
  // 29 CFR 1910.1200(c): health and physical hazards; the appendices have no environmental class.
  'us-hcs': ['Aquatic Acute', 'Aquatic Chronic', 'Ozone'],
  'eu-clp': [],
  'un-ghs': [],
};

/** Hazards that a row has and a substance by itself has not, by the row's own words. */
const byItsOwnWords: Readonly<Record<string, string>> = {
  '605-022-00-X 111-30-8 STOT SE 3': 'glutaral: STOT SE 3 by its specific limit from 0.5 to below 5 % alone',
};

const formOf = ({ hazards }: HarmonisedEntry): PhysicalForm => {
  const has = (end: string) => hazards.some(({ hazardClass }) => hazardClass.includes(end));
  return has(' Gas') ? 'gas' : has('Sol.') && !has('Liq.') ? 'solid' : 'liquid';
};

const formulas = new Map(
  (['gas', 'solid', 'liquid'] as const).map(form => {
    const record = readRecord(
      recordAround({ form, formula: [{ name: 'substance', cas: '50-00-0', percent: 100 }] }),
    );
    const formula = expandFormula(record);
    if (!formula.ok) throw new Error('the formula does not expand');
    return [form as PhysicalForm, { record, formula: formula.value }];
  }),
);

const number = ({ category }: { readonly category: string }): number => Number.parseInt(category, 10) || 0;

// CLP Annex VI Table 3 is the outside source: whoever pours one substance of it into a drum has all its hazards.
describe.each(['us-hcs', 'eu-clp', 'un-ghs'] as const)('under %s', async basis => {
  const reference = await openReference(basis, asOf);
  if (!reference.ok) throw new Error('no figures on that date');
  let hazards = 0;
  const unused: string[] = [];
  const open: string[] = [];
  for (const [key, row] of rowsInForce(asOf)) {
    const { record, formula } = formulas.get(formOf(row))!;
    const result = classify(record, formula, reference.value.basis, () => only(row));
    const isOfClass = ({ hazardClass }: Hazard, name: string) =>
      name === hazardClass || name.startsWith(`${hazardClass} `) || name.startsWith(`${hazardClass}/`);
    for (const hazard of row.hazards) {
      hazards++;
      if (without[basis]!.includes(hazard.hazardClass)) continue;
      const given = result.hazards.some(
        other => other.hazardClass === hazard.hazardClass && number(other) <= number(hazard),
      );
      if (given) continue;
      const undecided = result.otherClasses.find(
        other => isOfClass(hazard, other.class) && other.outcome !== 'not-classified',
      );
      if (undecided) open.push(`${hazard.hazardClass}: ${undecided.outcome}, ${undecided.because.kind}`);
      else if (!byItsOwnWords[`${key} ${hazard.code}`]) unused.push(`${key} ${hazard.code}`);
    }
  }

  it('every hazard of every row is used, or left open with a reason', () => {
    expect(hazards).toBeGreaterThan(12_000);
    expect(unused).toEqual([]);
  });

  it('is left open where a test of the substance decides, and nowhere else', () => {
    const decidedByTest = [
      'Asp. Tox.: insufficient-data, sum',
      'Expl.: insufficient-data, signs',
      'Flam. Liq.: insufficient-data, flash-point',
      'Press. Gas: insufficient-data, signs',
      'Self-heat.: not-applicable, form',
    ];
    expect([...new Set(open)].filter(each => !decidedByTest.includes(each))).toEqual([]);
  });
});
