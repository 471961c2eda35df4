import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import data from '../../../hazard-data/sheet/advice.json' with { type: 'json' };
import { adviceFor } from '../../../src/document/sheet/advice.ts';
import { classesOf, isHealth, isOfStandard } from '../../../src/document/sheet/hazards.ts';
import { type SheetInput, sheetJson } from '../../../src/document/sheet.ts';
import { es } from '../../../src/words/es/index.ts';
import { inputAround } from './sheet-input.ts';

// A sentence that denies a hazard is held against the classification it speaks of: the outside check is the rules' own
// result, which other tests hold against the law.

const places = [...new Set(data.rules.map(({ place }) => place))];

const hazards = [
  'Skin Corr. 1B',
  'Skin Irrit. 2',
  'Eye Dam. 1',
  'Eye Irrit. 2',
  'Flam. Liq. 2',
  'Ox. Liq. 2',
  'Org. Perox. D',
  'Self-react. C',
  'Acute Tox. 3 (oral)',
  'Acute Tox. 2 (inhalation)',
  'STOT SE 3 (respiratory irritation)',
  'STOT SE 1 (eyes)',
  'Carc. 1B',
  'Asp. Tox. 1',
  'Resp. Sens. 1',
  'Aquatic Chronic 1',
  'Met. Corr. 1',
];
const known = [
  ['sodium hypochlorite', '7681-52-9'],
  ['hydrogen peroxide', '7722-84-1'],
  ['methanol', '67-56-1'],
  ['hydrochloric acid', '7647-01-0'],
  ['sodium hydroxide', '1310-73-2'],
  ['ammonia', '1336-21-6'],
] as const;

const line = fc.oneof(
  fc.record({
    name: fc.nat(99).map(n => `trial ${n}`),
    percent: fc.integer({ min: 1, max: 9 }),
    hazards: fc.uniqueArray(fc.constantFrom(...hazards), { maxLength: 3 }),
    source: fc.constant('test'),
  }),
  fc.record({ name: fc.nat(99).map(n => `unknown ${n}`), percent: fc.integer({ min: 1, max: 9 }) }),
  fc
    .constantFrom(...known)
    .chain(([name, cas]) =>
      fc.record({ name: fc.constant(name), cas: fc.constant(cas), percent: fc.integer({ min: 1, max: 9 }) }),
    ),
);
const record = fc.record({
  form: fc.constantFrom('liquid', 'solid', 'aerosol'),
  properties: fc.oneof(
    fc.constant({}),
    fc.record({ pH: fc.integer({ min: 0, max: 14 }) }),
    fc.constant({ 'flash-point': 'none' }),
    fc.constant({ 'flash-point': '15 C (closed cup)', 'initial-boiling-point': '70 C' }),
  ),
  formula: fc
    .uniqueArray(line, { minLength: 1, maxLength: 5, selector: ({ name }) => name })
    .map(lines => [...lines, { name: 'water', cas: '7732-18-5', amount: 'balance' }]),
});

const classified = ({ classification }: SheetInput): ReadonlySet<string> =>
  new Set(classification.hazards.map(({ hazardClass }) => hazardClass));
const undecided = ({ classification }: SheetInput): ReadonlySet<string> =>
  new Set(
    classification.otherClasses
      .filter(({ outcome }) => outcome === 'insufficient-data')
      .flatMap(({ class: name }) => classesOf(name)),
  );

/** Denials outside the sentences of advice: what the text says in English and in Spanish, and when it may. */
const DENIALS: readonly (readonly [en: RegExp, es: RegExp, (input: SheetInput) => boolean])[] = [
  [
    /Not classified as hazardous for any class/u,
    /No clasificado como peligroso en ninguna/u,
    input => ![...classified(input), ...undecided(input)].some(isOfStandard),
  ],
  [
    /No hazard class is met as far as data go/u,
    /Hasta donde llegan los datos, no se cumple ninguna clase de peligro/u,
    input => ![...classified(input)].some(isOfStandard),
  ],
  [
    /No health hazard is classified\./u,
    /No se ha clasificado ningún peligro para la salud\./u,
    input => ![...classified(input), ...undecided(input)].some(isHealth),
  ],
  [
    /No health hazard is classified as far/u,
    /Hasta donde llegan los datos, no se ha clasificado ningún peligro para la salud/u,
    input => ![...classified(input)].some(isHealth),
  ],
  [/No pictogram is required/u, /no exige pictograma/u, ({ elements }) => elements.pictograms.length === 0],
  [
    /No signal word is required/u,
    /no exige palabra de advertencia/u,
    ({ elements }) => elements.signalWord === null,
  ],
  [
    /No hazard statement is required/u,
    /no exige indicaciones de peligro/u,
    ({ elements }) => elements.hazardStatements.length === 0,
  ],
  [
    /No ingredient is classified as a health hazard/u,
    /Ningún componente está clasificado como peligro para la salud/u,
    ({ classification }) =>
      classification.constituents.every(
        ({ data: { unknown, hazards: own }, water }) => water || unknown.size === 0 || own.length > 0,
      ),
  ],
  [
    /Not flammable: no flash|Does not burn: no ingredient|Not classified as flammable/u,
    /No inflamable: no se|No arde: ningún componente|No clasificado como inflamable/u,
    input => ![...classified(input)].some(name => /^(?:Flam|Aerosol|Pyr)/u.test(name)),
  ],
  [
    /mixture is not classified as hazardous to the aquatic/u,
    /la mezcla no se clasifica como peligrosa para el medio ambiente acuático/u,
    ({ environment }) =>
      !environment!.hazards.some(({ hazardClass }) => hazardClass.startsWith('Aquatic')) &&
      environment!.otherClasses.every(
        ({ class: name, outcome }) => !name.startsWith('Aquatic') || outcome !== 'insufficient-data',
      ),
  ],
  [
    /names no fire hazard/u,
    /no indica peligro de incendio/u,
    input =>
      !data.rules
        .find(({ id }) => id === 'media-surrounding')!
        .denies!.some(name => classified(input).has(name) || undecided(input).has(name)),
  ],
];

describe('a sentence that denies a hazard', () => {
  it('stands on no sheet whose classification has it or leaves it undecided', async () => {
    const seen = new Set<string>();
    await fc.assert(
      fc.asyncProperty(record, async parts => {
        const total = parts.formula.reduce((sum, each) => sum + ('percent' in each ? each.percent : 0), 0);
        fc.pre(total < 100);
        const input = await inputAround(parts);
        const [found, open] = [classified(input), undecided(input)];
        for (const place of places)
          for (const { id, denies } of [...adviceFor(input, place, false), ...adviceFor(input, place, true)])
            for (const name of denies) {
              seen.add(id);
              expect(found.has(name), `${id} denies ${name}`).toBe(false);
              expect(open.has(name), `${id} denies ${name}, undecided`).toBe(false);
            }
        const sheet = sheetJson(input);
        const text = JSON.stringify(sheet.sections);
        const spanish = JSON.stringify(sheetJson({ ...input, words: es }).sections);
        // Section 8 is of the ingredients of section 3 (Table D.1, 8 (a)); 11 names no other either.
        const listed = sheet.ingredients.map(({ name }) => name);
        for (const [section, key] of [
          [8, 'pel'],
          [11, 'carcinogens'],
          [11, 'ingredient-toxicity'],
        ] as const)
          for (const row of sheet.sections[section - 1]!.items.find(each => each.key === key)?.table ?? [])
            expect(
              listed.some(name => row.Ingredient!.startsWith(name)),
              `section ${section} names ${row.Ingredient}`,
            ).toBe(true);
        for (const [denial, denied, may] of DENIALS) {
          expect(denied.test(spanish), `${denied.source} beside ${denial.source}`).toBe(denial.test(text));
          if (denial.test(text)) {
            seen.add(denial.source);
            expect(may(input), denial.source).toBe(true);
          }
        }
        // Sections 2 and 11 name every undecided health class.
        const names = input.classification.otherClasses.filter(
          ({ class: name, outcome }) => outcome === 'insufficient-data' && isHealth(name),
        );
        if (names.length > 0) {
          expect(text).toContain('Not enough data to decide');
          expect(text).toContain('Not enough data"');
          expect(spanish).toContain('No hay datos suficientes para decidir');
          expect(spanish).toContain('Datos insuficientes"');
        }
      }),
      { numRuns: 150, seed: 11 },
    );
    // The records reach the sentences, so that the check can fail.
    expect(seen.size).toBeGreaterThan(6);
  });

  it('names a skin, an eye and a STOT SE 3 class that are not decided in sections 2 and 11', async () => {
    const input = await inputAround({
      formula: [
        { name: 'trial', percent: 10 },
        { name: 'water', amount: 'balance' },
      ],
    });
    const { sections } = sheetJson(input);
    for (const at of [1, 10])
      for (const title of [
        'Skin corrosion/irritation',
        'Serious eye damage/eye irritation',
        'Category 3 (narcotic effects)',
      ])
        expect(JSON.stringify(sections[at]), `${at + 1}`).toContain(title);
  });
});
