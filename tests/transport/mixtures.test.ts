import { describe, expect, it } from 'vitest';
import { described, lawRows, type Material, ship } from './_ship.ts';

interface Expected {
  readonly what: string;
  readonly material: Material;
  readonly description: string;
  readonly inner: string | null;
}

const plain = { flash: 'none', boil: 100 } as const;
const skin = (category: string) => [{ class: 'Skin Corr.', result: `Skin Corr. ${category}` }];
const notSkin = { class: 'Skin Corr.', result: 'not classified' };
const metal = { class: 'Met. Corr.', result: 'Met. Corr. 1' };
const solid = 'solid' as const;
const hypochlorite = { name: 'sodium hypochlorite', cas: '7681-52-9' };
const caustic = { name: 'sodium hydroxide', cas: '1310-73-2' };
const isopropanol = { name: 'propan-2-ol', cas: '67-63-0' };

// Expected: rows of 49 CFR 172.101, packing groups by 173.121, 173.133 and 173.137, precedence by 173.2a(b), inner
// limits of 173.150 to 173.155. The test results are samples.
const mixtures: readonly Expected[] = [
  {
    what: 'hypochlorite, skin test 1B',
    material: { ...plain, formula: [{ ...hypochlorite, percent: 12.5 }], pH: 12.5, tests: skin('1B') },
    description: 'UN1791, Hypochlorite solutions, 8, II',
    inner: '1 L',
  },
  {
    what: 'hypochlorite, skin test 1C',
    material: { ...plain, formula: [{ ...hypochlorite, percent: 12.5 }], pH: 12.5, tests: skin('1C') },
    description: 'UN1791, Hypochlorite solutions, 8, III',
    inner: '5 L',
  },
  {
    what: 'hypochlorite that attacks metal alone',
    material: { ...plain, formula: [{ ...hypochlorite, percent: 6 }], pH: 11, tests: [notSkin, metal] },
    description: 'UN1791, Hypochlorite solutions, 8, III',
    inner: '5 L',
  },
  {
    what: 'hypochlorite with less caustic',
    material: {
      ...plain,
      formula: [
        { ...hypochlorite, percent: 6 },
        { ...caustic, percent: 2 },
      ],
      pH: 13,
      tests: skin('1B'),
    },
    description: 'UN1791, Hypochlorite solutions, 8, II',
    inner: '1 L',
  },
  {
    what: 'sodium hydroxide 30 %',
    material: { ...plain, formula: [{ ...caustic, percent: 30 }], pH: 14, tests: skin('1B') },
    description: 'UN1824, Sodium hydroxide solution, 8, II',
    inner: '1 L',
  },
  {
    what: 'sodium hydroxide 1.5 %, test 1C',
    material: { ...plain, formula: [{ ...caustic, percent: 1.5 }], pH: 13, tests: skin('1C') },
    description: 'UN1824, Sodium hydroxide solution, 8, III',
    inner: '5 L',
  },
  {
    what: 'potassium hydroxide 30 %',
    material: {
      ...plain,
      formula: [{ name: 'potassium hydroxide', cas: '1310-58-3', percent: 30 }],
      pH: 14,
      tests: skin('1B'),
    },
    description: 'UN1814, Potassium hydroxide, solution, 8, II',
    inner: '1 L',
  },
  {
    what: 'sodium and potassium hydroxide in equal parts, test 1A: no row of packing group I',
    material: {
      ...plain,
      formula: [
        { ...caustic, percent: 10 },
        { name: 'potassium hydroxide', cas: '1310-58-3', percent: 10 },
      ],
      pH: 14,
      tests: skin('1A'),
    },
    description:
      'UN3266, Corrosive liquid, basic, inorganic, n.o.s. (sodium hydroxide, potassium hydroxide), 8, I',
    inner: null,
  },
  {
    what: 'sodium and potassium hydroxide in equal parts, test 1B',
    material: {
      ...plain,
      formula: [
        { ...caustic, percent: 5 },
        { name: 'potassium hydroxide', cas: '1310-58-3', percent: 5 },
      ],
      pH: 14,
      tests: skin('1B'),
    },
    description: 'UN1719, Caustic alkali liquids, n.o.s. (sodium hydroxide, potassium hydroxide), 8, II',
    inner: '1 L',
  },
  {
    what: 'hydrochloric acid, test 1B',
    material: {
      ...plain,
      formula: [{ name: 'hydrochloric acid', cas: '7647-01-0', percent: 20 }],
      pH: 0,
      tests: skin('1B'),
    },
    description: 'UN1789, Hydrochloric acid, 8, II',
    inner: '1 L',
  },
  {
    what: 'hydrochloric acid, test 1C',
    material: {
      ...plain,
      formula: [{ name: 'hydrochloric acid', cas: '7647-01-0', percent: 12 }],
      pH: 0,
      tests: skin('1C'),
    },
    description: 'UN1789, Hydrochloric acid, 8, III',
    inner: '5 L',
  },
  {
    what: 'phosphoric acid 30 %, worked out',
    material: { ...plain, formula: [{ name: 'phosphoric acid', cas: '7664-38-2', percent: 30 }], pH: 1 },
    description: 'UN1805, Phosphoric acid solution, 8, III',
    inner: '5 L',
  },
  {
    what: 'sulfuric acid 10 %, worked out',
    material: { ...plain, formula: [{ name: 'sulphuric acid', cas: '7664-93-9', percent: 10 }], pH: 0.5 },
    description: 'UN2796, Sulfuric acid, 8, II',
    inner: '1 L',
  },
  {
    what: 'two mineral acids in equal parts',
    material: {
      ...plain,
      formula: [
        { name: 'phosphoric acid', cas: '7664-38-2', percent: 10 },
        { name: 'hydrochloric acid', cas: '7647-01-0', percent: 10 },
      ],
      pH: 0,
      tests: skin('1B'),
    },
    description:
      'UN3264, Corrosive liquid, acidic, inorganic, n.o.s. (phosphoric acid, hydrochloric acid), 8, II',
    inner: '1 L',
  },
  {
    what: 'an organic acid that the table does not name',
    material: {
      ...plain,
      formula: [{ name: 'glycolic acid', cas: '79-14-1', percent: 30, hazards: ['Skin Corr. 1B'] }],
      pH: 1,
      tests: skin('1B'),
    },
    description: 'UN3265, Corrosive liquid, acidic, organic, n.o.s. (glycolic acid), 8, II',
    inner: '1 L',
  },
  {
    what: 'an acid and a base of unknown kind',
    material: {
      ...plain,
      formula: [{ name: 'a corrosive blend', percent: 20, hazards: ['Skin Corr. 1B'] }],
      tests: skin('1B'),
    },
    description: 'UN1760, Corrosive liquids, n.o.s. (a corrosive blend), 8, II',
    inner: '1 L',
  },
  {
    what: '2-aminoethanol 20 %',
    material: {
      ...plain,
      formula: [{ name: '2-aminoethanol', cas: '141-43-5', percent: 20 }],
      pH: 12,
      tests: skin('1C'),
    },
    description: 'UN2491, Ethanolamine solutions, 8, III',
    inner: '5 L',
  },
  {
    what: 'isopropanol with a corrosive amine, 3 II and 8 II',
    material: {
      flash: '15 C',
      boil: 80,
      formula: [
        { ...isopropanol, percent: 60 },
        { name: 'a corrosive amine', percent: 8, hazards: ['Skin Corr. 1B'] },
      ],
      tests: skin('1B'),
    },
    description: 'UN2924, Flammable liquids, corrosive, n.o.s. (propan-2-ol, a corrosive amine), 3 (8), II',
    inner: '1 L',
  },
  {
    what: 'a solvent of packing group III and 8 II',
    material: {
      flash: '40 C',
      boil: 150,
      formula: [
        { name: 'a solvent', percent: 60, hazards: ['Flam. Liq. 3'] },
        { name: 'a corrosive amine', percent: 40, hazards: ['Skin Corr. 1B'] },
      ],
      tests: skin('1B'),
    },
    description: 'UN2920, Corrosive liquids, flammable, n.o.s. (a solvent, a corrosive amine), 8 (3), II',
    inner: '1 L',
  },
  {
    what: 'two alcohols',
    material: {
      flash: '20 C',
      boil: 80,
      formula: [
        { ...isopropanol, percent: 30 },
        { name: 'ethanol', cas: '64-17-5', percent: 30 },
      ],
    },
    description: 'UN1987, Alcohols, n.o.s., 3, II',
    inner: '1 L',
  },
  {
    what: 'two hydrocarbons',
    material: {
      flash: '20 C',
      boil: 110,
      formula: [
        { name: 'toluene', cas: '108-88-3', percent: 50 },
        { name: 'xylene', cas: '1330-20-7', percent: 50 },
      ],
    },
    description: 'UN3295, Hydrocarbons, liquid, n.o.s., 3, II',
    inner: '1 L',
  },
  {
    what: 'a ketone and an alcohol',
    material: {
      flash: '0 C',
      boil: 60,
      formula: [
        { name: 'acetone', cas: '67-64-1', percent: 50 },
        { ...isopropanol, percent: 50 },
      ],
    },
    description: 'UN1993, Flammable liquids, n.o.s. (acetone, propan-2-ol), 3, II',
    inner: '1 L',
  },
  {
    what: 'a liquid that boils at 35 C',
    material: {
      flash: '-40 C',
      boil: 35,
      formula: [
        { name: 'a light solvent', percent: 50, hazards: ['Flam. Liq. 1'] },
        { name: 'acetone', cas: '67-64-1', percent: 50 },
      ],
    },
    description: 'UN1993, Flammable liquids, n.o.s. (a light solvent, acetone), 3, I',
    inner: '0.5 L',
  },
  {
    what: 'toxic by mouth, packing group III',
    material: {
      ...plain,
      formula: [
        { name: 'a poison', percent: 50, hazards: ['Acute Tox. 3 (oral)'], ate: { oral: '100 mg/kg' } },
      ],
      tests: [notSkin],
    },
    description: 'UN2810, Toxic, liquids, organic, n.o.s. (a poison), 6.1, III',
    inner: '5 L',
  },
  {
    what: 'toxic by mouth, packing group II',
    material: {
      ...plain,
      formula: [
        { name: 'a poison', percent: 50, hazards: ['Acute Tox. 2 (oral)'], ate: { oral: '20 mg/kg' } },
      ],
    },
    description: 'UN2810, Toxic, liquids, organic, n.o.s. (a poison), 6.1, II',
    inner: '100 mL',
  },
  {
    what: 'sodium hydroxide, solid',
    material: { form: solid, formula: [{ ...caustic, percent: 100 }] },
    description: 'UN1823, Sodium hydroxide, solid, 8, II',
    inner: '1 kg',
  },
  {
    what: 'sulfamic acid, solid',
    material: { form: solid, formula: [{ name: 'sulphamidic acid', cas: '5329-14-6', percent: 100 }] },
    description: 'UN2967, Sulfamic acid, 8, III',
    inner: '5 kg',
  },
  {
    what: 'disodium trioxosilicate, solid',
    material: { form: solid, formula: [{ name: 'disodium metasilicate', cas: '6834-92-0', percent: 100 }] },
    description: 'UN3253, Disodium trioxosilicate, 8, III',
    inner: '5 kg',
  },
  {
    what: 'potassium permanganate',
    material: { form: solid, formula: [{ name: 'potassium permanganate', cas: '7722-64-7', percent: 100 }] },
    description: 'UN1490, Potassium permanganate, 5.1, II',
    inner: '1 kg',
  },
  {
    what: 'sodium persulfate',
    material: {
      form: solid,
      formula: [{ name: 'disodium peroxodisulphate', cas: '7775-27-1', percent: 100 }],
    },
    description: 'UN1505, Sodium persulfate, 5.1, III',
    inner: '5 kg',
  },
  {
    what: 'trichloroisocyanuric acid',
    material: { form: solid, formula: [{ name: 'symclosene', cas: '87-90-1', percent: 100 }] },
    description: 'UN2468, Trichloroisocyanuric acid, dry, 5.1, II',
    inner: '1 kg',
  },
  {
    what: 'naphthalene',
    material: { form: solid, formula: [{ name: 'naphthalene', cas: '91-20-3', percent: 100 }] },
    description: 'UN1334, Naphthalene, crude, 4.1, III',
    inner: '5 kg',
  },
];

describe('a mixture', () => {
  it('is held against a row of 49 CFR 172.101, and no two are the same', () => {
    for (const { description } of mixtures) expect(lawRows(description), description).not.toEqual([]);
    expect(new Set(mixtures.map(({ material }) => JSON.stringify(material))).size).toBe(mixtures.length);
    expect(mixtures.length).toBeGreaterThanOrEqual(30);
  });
  it.each(mixtures.map(each => [each.what, each] as const))('%s', async (_, each) => {
    const answer = await ship(each.material);
    expect(described(answer)).toBe(each.description);
    expect(answer.limitedQuantity?.innerLimit ?? null).toBe(each.inner);
  });
});
