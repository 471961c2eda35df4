import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listedClass } from '../../src/notation/listed-class.ts';
import { classifyLines, classifyValue, recordAround } from '../support/cases.ts';
import { basis } from './random-records.ts';

interface OfClass {
  readonly hazardClass: string;
  readonly route: string | null;
  readonly effect: string | null;
}

const isSame = (one: OfClass, other: OfClass): boolean =>
  listedClass(one.hazardClass) === listedClass(other.hazardClass) &&
  (one.route ?? other.route) === (other.route ?? one.route) &&
  one.effect === other.effect;

/** Corrosion before irritation, then the number of the category. */
const rank = ({
  hazardClass,
  category,
}: {
  readonly hazardClass: string;
  readonly category: string;
}): number => (/Irrit/u.test(hazardClass) ? 10 : 0) + number(category);
const number = (category: string): number => Number.parseInt(category, 10) || 0;

/** Substances of CLP Annex VI Table 3; hydrogen peroxide and glutaral have estimates or M-factors, all have hazards. */
const substances = [
  ['sodium hydroxide', '1310-73-2'],
  ['glutaral', '111-30-8'],
  ['pyrithione zinc', '13463-41-7'],
  ['methanol', '67-56-1'],
  ['hydrogen peroxide', '7722-84-1'],
  ['ethanol', '64-17-5'],
  ['2-butoxyethanol', '111-76-2'],
] as const;
const typed = [
  'Skin Corr. 1B',
  'Skin Irrit. 2',
  'Eye Irrit. 2',
  'Flam. Liq. 2',
  'Flam. Liq. 3',
  'Acute Tox. 4 (oral)',
  'Acute Tox. 3 (oral)',
  'STOT SE 1',
  'Aquatic Acute 1',
  'Skin Sens. 1',
];

const substance = fc.record({
  of: fc.constantFrom(...substances),
  percent: fc.integer({ min: 1, max: 25 }),
  hazards: fc.option(fc.uniqueArray(fc.constantFrom(...typed), { maxLength: 4 }), { nil: undefined }),
  ate: fc.constantFrom(undefined, undefined, '50 mg/kg', '1500 mg/kg', '4000 mg/kg'),
  m: fc.constantFrom(undefined, undefined, 1, 10, 10000),
});

type Value = typeof substance extends fc.Arbitrary<infer T> ? T : never;

const lineOf = ({ of: [name, cas], percent, hazards, ate, m }: Value) => ({
  name,
  cas,
  percent,
  ...(hazards && { hazards }),
  ...(ate && { ate: { oral: ate } }),
  ...(m && { 'm-factors': { acute: m, chronic: m } }),
  source: 'supplier sheet',
});

// CLP Article 4(3) and Annex VI: the harmonised classification is the other source.
it('the record against a harmonised entry is told once, with the source of the one and the index of the other', async () => {
  let told = 0;
  await fc.assert(
    fc.asyncProperty(substance, basis, async (value, id) => {
      const { of, percent, hazards, ate, m } = value;
      const water = { name: 'water', amount: 'balance' };
      const dataOf = (told: Awaited<ReturnType<typeof classifyLines>>) =>
        told.constituents.find(({ cas }) => cas === of[1])!.data;
      const theirs = dataOf(await classifyLines([{ name: of[0], cas: of[1], percent }, water], id));
      const found = await classifyLines([lineOf(value), water], id);
      const warnings = found.warnings.filter(warning => warning.id === 'record-replaces-entry');
      const own = dataOf(found);
      const milder = theirs.hazards.filter(
        hazard => !own.hazards.some(ours => isSame(ours, hazard) && rank(ours) <= rank(hazard)),
      );
      const estimate = theirs.ate.oral;
      const lostEstimate = estimate && (!own.ate.oral || own.ate.oral.value > estimate.value);
      const lostFactor =
        own.mFactors.acute < theirs.mFactors.acute || own.mFactors.chronic < theirs.mFactors.chronic;
      const lostLimits = hazards !== undefined && theirs.limits.length > 0;
      if (!hazards && !ate && !m) expect(warnings).toEqual([]);
      if (milder.length > 0 || lostEstimate || lostFactor || lostLimits) {
        told++;
        expect(warnings).toHaveLength(1);
        const { source, index, lost, text } = warnings[0] as (typeof warnings)[0] & {
          id: 'record-replaces-entry';
        };
        expect(source).toBe('supplier sheet');
        expect(text).toContain(index);
        for (const hazard of milder) expect(lost.hazards.map(({ code }) => code)).toContain(hazard.code);
        if (lostEstimate) expect(lost.ate.map(({ key }) => key)).toContain('oral');
        if (lostFactor) expect(Object.keys(lost.mFactors).length).toBeGreaterThan(0);
      }
    }),
    { numRuns: 150, seed: 3 },
  );
  expect(told).toBeGreaterThan(50);
});

const results = {
  'Skin Corr.': ['not classified', 'Skin Irrit. 2', 'Skin Corr. 1B'],
  'Eye Dam.': ['not classified', 'Eye Irrit. 2', 'Eye Dam. 1'],
  'Flam. Liq.': ['not classified', 'Flam. Liq. 3', 'Flam. Liq. 2'],
  'Acute Tox.': ['not classified', 'Acute Tox. 4', 'Acute Tox. 3'],
  'Met. Corr.': ['not classified', 'Met. Corr. 1'],
  'Skin Sens.': ['not classified', 'Skin Sens. 1'],
} as const;

const evidence = fc.constantFrom(...(Object.keys(results) as (keyof typeof results)[])).chain(name =>
  fc.record({
    class: fc.constant(name),
    result: fc.constantFrom(...results[name]),
    kind: fc.constant('test'),
    method: fc.nat(9).map(n => `study ${n}`),
    source: fc.nat(99).map(n => `report ${n}`),
    ...(name === 'Acute Tox.' && { route: fc.constant('oral') }),
  }),
);
const ingredients = fc.uniqueArray(fc.constantFrom(...typed, 'Eye Dam. 1', 'Skin Sens. 1A'), {
  maxLength: 4,
});
const measured = fc.record({
  pH: fc.option(fc.integer({ min: 0, max: 14 }), { nil: undefined }),
  'flash-point': fc.constantFrom('none', '15 C (closed cup)', '40 C (closed cup)', '80 C (closed cup)'),
  'initial-boiling-point': fc.constant('70 C'),
});

const codeOf = (result: string): string => (result === 'not classified' ? 'not-classified' : result);

describe('evidence', () => {
  // 29 CFR 1910.1200 App. A, A.0.3 and A.0.4.1: evidence and calculation are both shown; the reviewer weighs them.
  it('against the calculation, a measured property or other evidence is told once, with both', async () => {
    let [calculated, conflicts] = [0, 0];
    await fc.assert(
      fc.asyncProperty(
        fc.uniqueArray(evidence, { minLength: 1, maxLength: 3, selector: ({ source }) => source }),
        ingredients,
        measured,
        basis,
        async (entries, hazards, properties, id) => {
          const record = {
            formula: [
              { name: 'trial', percent: 30, hazards, source: 'test' },
              { name: 'water', amount: 'balance' },
            ],
            properties: Object.fromEntries(
              Object.entries(properties).filter(([, each]) => each !== undefined),
            ),
            evidence: entries,
          };
          const found = await classifyValue(recordAround(record), id);
          const texts = found.warnings.map(({ text }) => text);
          const shown = [...found.hazards, ...found.otherClasses];
          for (const { class: name, result, source, method } of entries) {
            const taken = shown.filter(
              ({ because }) =>
                because.kind === 'test' && because.source === source && because.method === method,
            );
            const mentions = texts.filter(text => text.includes(`(${method}; ${source})`));
            // Used, or told why not; never both silent.
            if (taken.length === 0) {
              expect(mentions.length, `${name} ${source}`).toBeGreaterThan(0);
              continue;
            }
            expect(taken, `${name} ${source}`).toHaveLength(1);
            const without = await classifyValue(
              recordAround({ ...record, evidence: entries.filter(each => each.class !== name) }),
              id,
            );
            const [before] = without.hazards.filter(
              each =>
                listedClass(each.hazardClass) === listedClass(name) &&
                (name !== 'Acute Tox.' || each.route === 'oral'),
            );
            const [open] = without.otherClasses.filter(
              each => each.class === listedClass(name) && (name !== 'Acute Tox.' || each.route === 'oral'),
            );
            expect(taken[0]!.calculated?.outcome, `${name} ${source}`).toBe(before?.code ?? open!.outcome);
            calculated++;
            const temperature = record.properties['flash-point'] !== 'none';
            if (name === 'Flam. Liq.' && temperature && taken[0]!.calculated!.outcome !== codeOf(result))
              expect(mentions.filter(text => text.includes('flash point'))).toHaveLength(1);
            const said = taken[0]!.because.working;
            expect(said).toContain(source);
            const others = entries.filter(each => each.class === name && each.result !== result);
            for (const other of others) {
              conflicts++;
              expect(
                texts.filter(text => text.includes(other.source) && text.includes(source)),
                `${name}: ${source} against ${other.source}`,
              ).toHaveLength(1);
            }
          }
        },
      ),
      { numRuns: 150, seed: 4 },
    );
    expect(calculated).toBeGreaterThan(100);
    expect(conflicts).toBeGreaterThan(5);
  });
});

// Flash points of flammable liquids of Categories 1 and 2 lie below 23 C (29 CFR 1910.1200 App. B, Table B.6.1): 10 % of
// one beside no flash point, or one above 60 C, is a question (common practice, no source).
it('a flash point that the ingredients contradict is asked about once, with both', async () => {
  let asked = 0;
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 1, max: 40 }),
      fc.constantFrom('Flam. Liq. 1', 'Flam. Liq. 2', 'Skin Irrit. 2'),
      measured,
      basis,
      async (percent, hazard, properties, id) => {
        const lines = [
          { name: 'trial', percent, hazards: [hazard], source: 'test' },
          { name: 'water', amount: 'balance' },
        ];
        const { pH: _, ...kept } = properties;
        const found = await classifyLines(lines, id, { properties: kept });
        const questions = found.warnings.filter(warning => warning.id === 'doubtful-measurement');
        const flash = properties['flash-point'];
        const doubted =
          percent >= 10 && hazard !== 'Skin Irrit. 2' && (flash === 'none' || flash.startsWith('80'));
        expect(questions).toHaveLength(doubted ? 1 : 0);
        if (!doubted) return;
        asked++;
        expect(questions[0]!.text).toContain(`${percent} % trial`);
        expect(questions[0]!.text).toContain('flash point');
      },
    ),
    { numRuns: 150, seed: 6 },
  );
  expect(asked).toBeGreaterThan(20);
});
