import fc from 'fast-check';
import type { Classification, ClassifiedHazard } from '../../src/classify/classification.ts';

/** A CAS number of no real substance, with its check digit. */
export function inventedCas(n: number): string {
  const digits = `99${String(n).padStart(5, '0')}00`;
  const sum = [...digits].reverse().reduce((total, digit, i) => total + Number(digit) * (i + 1), 0);
  return `${digits.slice(0, -2)}-${digits.slice(-2)}-${sum % 10}`;
}

const oneOfEach: readonly (readonly string[])[] = [
  ['Skin Corr. 1', 'Skin Corr. 1A', 'Skin Corr. 1B', 'Skin Corr. 1C', 'Skin Irrit. 2'],
  ['Eye Dam. 1', 'Eye Irrit. 2', 'Eye Irrit. 2A', 'Eye Irrit. 2B'],
  [1, 2, 3, 4].map(n => `Acute Tox. ${n} (oral)`),
  [1, 2, 3, 4].map(n => `Acute Tox. ${n} (dermal)`),
  [1, 2, 3, 4].flatMap(n =>
    ['', ': gas', ': vapour', ': mist'].map(form => `Acute Tox. ${n} (inhalation${form})`),
  ),
  ['Resp. Sens. 1', 'Resp. Sens. 1A', 'Resp. Sens. 1B'],
  ['Skin Sens. 1', 'Skin Sens. 1A', 'Skin Sens. 1B'],
  ['Muta. 1A', 'Muta. 1B', 'Muta. 2'],
  ['Carc. 1A', 'Carc. 1B; H350i', 'Carc. 2'],
  ['Repr. 1A; H360FD', 'Repr. 1B; H360Fd', 'Repr. 1B', 'Repr. 2; H361d', 'Repr. 2'],
  ['Lact.'],
  ['STOT SE 1', 'STOT SE 2'],
  ['STOT SE 3 (respiratory irritation)'],
  ['STOT SE 3 (narcotic effects)'],
  ['STOT RE 1 (kidney)', 'STOT RE 2 (liver; oral)'],
  ['Asp. Tox. 1'],
  ['Aquatic Acute 1'],
  [1, 2, 3, 4].map(n => `Aquatic Chronic ${n}`),
  ['Ozone 1'],
  ['ED HH 1', 'ED HH 2'],
  ['PBT'],
];

const hazards = fc
  .subarray([...oneOfEach], { maxLength: 4 })
  .chain(classes => fc.tuple(...classes.map(codes => fc.constantFrom(...codes))));

// Figures of the law and their neighbours, in thousandths of a percent.
const edges = [10, 100, 200, 300, 1000, 3000, 5000, 10_000, 20_000, 25_000];
const thousandths = fc.oneof(
  fc.tuple(fc.constantFrom(...edges), fc.constantFrom(-1, 0, 1)).map(([edge, step]) => edge + step),
  fc.integer({ min: 1, max: 30_000 }),
);

/** A constituent: thousandths of a percent, and its line without name and percent. */
export interface Constituent {
  readonly amount: number;
  readonly line: Readonly<Record<string, unknown>>;
}

/** A known constituent with hazards, now and then with an estimate, an M-factor or outside the sums. */
export const constituent: fc.Arbitrary<Constituent> = fc.record({
  amount: thousandths,
  line: fc
    .record({
      hazards,
      ate: fc.option(fc.constantFrom('4.9', '5', '50', '300', '2000', '4999', '5000'), {
        nil: undefined,
        freq: 6,
      }),
      m: fc.constantFrom(undefined, undefined, 1, 10, 100),
      additive: fc.constantFrom(undefined, undefined, undefined, false),
      unknown: fc.constantFrom(undefined, undefined, undefined, ['acute-dermal']),
    })
    .map(({ hazards: codes, ate, m, additive, unknown }) => ({
      hazards: codes,
      source: 'test',
      ...(ate && { ate: { oral: `${ate} mg/kg` } }),
      ...(m && { 'm-factors': { acute: m, chronic: m } }),
      ...(additive === false && { additive }),
      ...(unknown && !codes.some(code => code.includes('dermal')) && { unknown }),
    })),
});

/** One to five constituents of together at most 100 %. */
export const mixture: fc.Arbitrary<readonly Constituent[]> = fc
  .array(constituent, { minLength: 1, maxLength: 5 })
  .filter(parts => parts.reduce((sum, { amount }) => sum + amount, 0) <= 100_000);

/** Formula lines of constituents, the rest water. */
export const linesOf = (parts: readonly Constituent[]): Record<string, unknown>[] => [
  ...parts.map(({ amount, line }, i) => ({
    name: `Ingredient ${i + 1}`,
    cas: inventedCas(i),
    percent: amount / 1000,
    ...line,
  })),
  ...(parts.reduce((sum, { amount }) => sum + amount, 0) < 100_000
    ? [{ name: 'water', amount: 'balance' }]
    : []),
];

// Doubles added in another order may differ in their last digit.
const rounded = (value: number | null): number | null => value && Number(value.toPrecision(12));

/** What must not depend on how a formula is written down. */
export const essence = ({ hazards: found, ateMix, unknownAcuteToxicity, otherClasses }: Classification) => ({
  hazards: found.map(({ code, route, effect, organs, statements }) => ({
    code,
    route,
    effect,
    organs: [...organs].sort(),
    statements,
  })),
  ateMix: Object.entries(ateMix).map(([key, value]) => [key, rounded(value)]),
  unknown: Object.entries(unknownAcuteToxicity).map(([key, value]) => [key, rounded(value)]),
  others: otherClasses.map(({ class: name, outcome }) => [name, outcome]),
});

const families: Readonly<Record<string, string>> = {
  'Skin Corr.': 'skin',
  'Skin Irrit.': 'skin',
  'Eye Dam.': 'eye',
  'Eye Irrit.': 'eye',
};

const leads: readonly string[] = ['Skin Corr.', 'Eye Dam.'];

/** The hazard of each class, skin and eye as one class each, acute toxicity by route and STOT SE 3 by effect. */
export function byFamily({ hazards: found }: Classification): Map<string, ClassifiedHazard> {
  // The most severe of a family stands first.
  return new Map(
    [...found].reverse().map(hazard => {
      const { hazardClass, route, effect } = hazard;
      const parts = [
        families[hazardClass] ?? hazardClass,
        hazardClass === 'Acute Tox.' ? route : null,
        effect,
      ];
      return [parts.filter(Boolean).join(' '), hazard];
    }),
  );
}

/** Whether one hazard is worse than another of its family; corrosive without sub-category is neither worse nor milder. */
function isWorse(a: ClassifiedHazard, b: ClassifiedHazard): boolean {
  const [aLeads, bLeads] = [a, b].map(({ hazardClass }) => leads.includes(hazardClass));
  if (aLeads !== bLeads) return aLeads!;
  if (a.hazardClass === 'Skin Corr.' && [a, b].some(({ category }) => category === '1')) return false;
  return a.category < b.category;
}

/** Families of which the second classification has a hazard that is worse than in the first, or new. */
export function worsened(before: Classification, after: Classification): string[] {
  const known = byFamily(before);
  return [...byFamily(after)]
    .filter(([family, hazard]) => {
      const present = known.get(family);
      return !present || isWorse(hazard, present);
    })
    .map(([family]) => family);
}
