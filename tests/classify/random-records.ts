import fc from 'fast-check';
import { hazardClasses, hazardCode } from '../../src/notation/classes.ts';
import { openQuestion } from '../../src/notation/open-question.ts';
import { parseHazard } from '../../src/notation/parse-hazard.ts';

/** Every class and category that a record may name, with route, effect or organs where it needs them. */
export const everyHazard: readonly string[] = hazardClasses
  .flatMap(({ class: name, categories }) => categories.map(({ category }) => hazardCode(name, category)))
  .flatMap(code =>
    code.startsWith('Acute Tox.')
      ? ['oral', 'dermal', 'inhalation', 'inhalation: mist'].map(route => `${code} (${route})`)
      : code === 'STOT SE 3'
        ? [`${code} (narcotic effects)`, `${code} (respiratory irritation)`]
        : code.startsWith('STOT')
          ? [code, `${code} (kidney)`, `${code} (liver)`]
          : [code],
  )
  .filter(code => {
    const read = parseHazard(code);
    return read.ok && !openQuestion(read.value);
  });

/** Substances of CLP Annex VI Table 3 with hazards of many kinds. */
const harmonised = [
  ['kerosine', '8008-20-6'],
  ['ethanol', '64-17-5'],
  ['hydrogen peroxide', '7722-84-1'],
  ['sodium hydroxide', '1310-73-2'],
  ['methanol', '67-56-1'],
  ['glutaral', '111-30-8'],
  ['pyrithione zinc', '13463-41-7'],
  ['toluene', '108-88-3'],
  ['cobalt', '7440-48-4'],
] as const;

const percent = fc.integer({ min: 1, max: 20 });
const named = fc.nat(99).map(n => `trial ${n}`);

const line: fc.Arbitrary<Record<string, unknown>> = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({
      name: named,
      percent,
      hazards: fc.uniqueArray(fc.constantFrom(...everyHazard), { minLength: 1, maxLength: 4 }),
      source: fc.constant('test'),
    }),
  },
  { weight: 1, arbitrary: fc.record({ name: named, percent }) },
  {
    weight: 2,
    arbitrary: fc
      .tuple(fc.constantFrom(...harmonised), percent)
      .map(([[name, cas], share]) => ({ name, cas, percent: share })),
  },
);

/** Lines of a formula with at most 100 %, the rest water or one of the lines. */
export const formula = fc
  .tuple(
    fc.uniqueArray(line, { minLength: 1, maxLength: 5, selector: ({ name }) => name }),
    fc.integer({ min: 0, max: 3 }),
  )
  .map(([lines, filled]) =>
    filled === 0
      ? lines.map((each, i) => {
          if (i > 0) return each;
          const { percent: _, ...rest } = each;
          return { ...rest, amount: 'balance' };
        })
      : [...lines, { name: 'water', cas: '7732-18-5', amount: 'balance' }],
  );

export const form = fc.constantFrom('liquid', 'liquid', 'solid', 'gas', 'aerosol');

export const properties = fc.oneof(
  fc.constant({}),
  fc.record({ pH: fc.integer({ min: 0, max: 14 }) }),
  fc.constant({ 'flash-point': 'none' }),
  fc.constant({ 'flash-point': '15 C (closed cup)', 'initial-boiling-point': '70 C' }),
  fc.constant({ 'kinematic-viscosity-40C': '1.5 mm2/s' }),
);

/** A record's form, measured properties and formula. */
export const parts = fc.record({ form, properties, formula });

export const basis = fc.constantFrom('us-hcs' as const, 'eu-clp' as const, 'un-ghs' as const);
