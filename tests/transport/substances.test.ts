import { describe, expect, it } from 'vitest';
import { described, lawRows, type Material, ship } from './_ship.ts';

interface Expected {
  readonly material: Material;
  readonly description: string;
  /** Inner limit of limited quantities; null where the table refers to none. */
  readonly inner: string | null;
}

const pure = (name: string, cas: string, more: Partial<Material> = {}): Material => ({
  ...more,
  formula: [{ name, cas, percent: 100 }],
});

const solution = (name: string, cas: string, percent: number, more: Partial<Material> = {}): Material => ({
  flash: 'none',
  boil: 100,
  ...more,
  formula: [{ name, cas, percent }],
});

// Expected: rows of the Hazardous Materials Table (49 CFR 172.101, text in force 2026-07-28) and inner limits of
// 173.150 to 173.155. Flash and boiling points of the solvents are from memory; packing groups follow 173.121.
const named: readonly Expected[] = [
  {
    material: pure('acetone', '67-64-1', { flash: '-20 C', boil: 56 }),
    description: 'UN1090, Acetone, 3, II',
    inner: '1 L',
  },
  {
    material: pure('propan-2-ol', '67-63-0', { flash: '12 C', boil: 82 }),
    description: 'UN1219, Isopropanol, 3, II',
    inner: '1 L',
  },
  {
    material: solution('propan-2-ol', '67-63-0', 70, { flash: '18 C', boil: 80 }),
    description: 'UN1219, Isopropanol solution, 3, II',
    inner: '1 L',
  },
  {
    material: pure('ethanol', '64-17-5', { flash: '13 C', boil: 78 }),
    description: 'UN1170, Ethanol, 3, II',
    inner: '1 L',
  },
  {
    material: solution('ethanol', '64-17-5', 40, { flash: '26 C', boil: 82 }),
    description: 'UN1170, Ethanol solutions, 3, III',
    inner: '5 L',
  },
  {
    material: pure('methanol', '67-56-1', { flash: '11 C', boil: 65 }),
    description: 'UN1230, Methanol, 3, II',
    inner: '1 L',
  },
  {
    material: pure('propan-1-ol', '71-23-8', { flash: '22 C', boil: 97 }),
    description: 'UN1274, n-Propanol, 3, II',
    inner: '1 L',
  },
  {
    material: pure('butan-1-ol', '71-36-3', { flash: '35 C', boil: 117 }),
    description: 'UN1120, Butanols, 3, III',
    inner: '5 L',
  },
  {
    material: pure('2-methylpropan-1-ol', '78-83-1', { flash: '28 C', boil: 108 }),
    description: 'UN1212, Isobutanol, 3, III',
    inner: '5 L',
  },
  {
    material: pure('butanone', '78-93-3', { flash: '-9 C', boil: 80 }),
    description: 'UN1193, Ethyl methyl ketone, 3, II',
    inner: '1 L',
  },
  {
    material: pure('4-methylpentan-2-one', '108-10-1', { flash: '14 C', boil: 117 }),
    description: 'UN1245, Methyl isobutyl ketone, 3, II',
    inner: '1 L',
  },
  {
    material: pure('ethyl acetate', '141-78-6', { flash: '-4 C', boil: 77 }),
    description: 'UN1173, Ethyl acetate, 3, II',
    inner: '1 L',
  },
  {
    material: pure('n-butyl acetate', '123-86-4', { flash: '27 C', boil: 126 }),
    description: 'UN1123, Butyl acetates, 3, III',
    inner: '5 L',
  },
  {
    material: pure('toluene', '108-88-3', { flash: '4 C', boil: 111 }),
    description: 'UN1294, Toluene, 3, II',
    inner: '1 L',
  },
  {
    material: pure('xylene', '1330-20-7', { flash: '27 C', boil: 138 }),
    description: 'UN1307, Xylenes, 3, III',
    inner: '5 L',
  },
  {
    material: pure('heptane', '142-82-5', { flash: '-4 C', boil: 98 }),
    description: 'UN1206, Heptanes, 3, II',
    inner: '1 L',
  },
  {
    material: pure('cyclohexane', '110-82-7', { flash: '-18 C', boil: 81 }),
    description: 'UN1145, Cyclohexane, 3, II',
    inner: '1 L',
  },
  {
    material: pure('1-methoxypropan-2-ol', '107-98-2', { flash: '32 C', boil: 120 }),
    description: 'UN3092, 1-Methoxy-2-propanol, 3, III',
    inner: '5 L',
  },
  {
    material: pure('d-limonene', '5989-27-5', { flash: '48 C', boil: 176 }),
    description: 'UN2052, Dipentene, 3, III',
    inner: '5 L',
  },
  {
    material: pure('turpentine', '8006-64-2', { flash: '35 C', boil: 154 }),
    description: 'UN1299, Turpentine, 3, III',
    inner: '5 L',
  },
  {
    material: pure('tetrahydrofuran', '109-99-9', { flash: '-17 C', boil: 66 }),
    description: 'UN2056, Tetrahydrofuran, 3, II',
    inner: '1 L',
  },
  {
    material: pure('cyclohexanone', '108-94-1', { flash: '44 C', boil: 155 }),
    description: 'UN1915, Cyclohexanone, 3, III',
    inner: '5 L',
  },
  {
    material: solution('acetic acid', '64-19-7', 99, { flash: '39 C', boil: 118 }),
    description: 'UN2789, Acetic acid solution, 8 (3), II',
    inner: '1 L',
  },
  {
    material: solution('acetic acid', '64-19-7', 60, { flash: 'none' }),
    description: 'UN2790, Acetic acid solution, 8, II',
    inner: '1 L',
  },
  {
    material: solution('acetic acid', '64-19-7', 50, { flash: 'none' }),
    description: 'UN2790, Acetic acid solution, 8, II',
    inner: '1 L',
  },
  {
    material: solution('acetic acid', '64-19-7', 20, { flash: 'none' }),
    description: 'UN2790, Acetic acid solution, 8, III',
    inner: '5 L',
  },
  {
    material: solution('formic acid', '64-18-6', 90, { flash: '50 C' }),
    description: 'UN1779, Formic acid, 8 (3), II',
    inner: '1 L',
  },
  {
    material: solution('formic acid', '64-18-6', 30, { flash: 'none' }),
    description: 'UN3412, Formic acid, 8, II',
    inner: '1 L',
  },
  {
    material: solution('formic acid', '64-18-6', 7, { flash: 'none' }),
    description: 'UN3412, Formic acid, 8, III',
    inner: '5 L',
  },
  {
    material: solution('propionic acid', '79-09-4', 50, { flash: 'none' }),
    description: 'UN1848, Propionic acid, 8, III',
    inner: '5 L',
  },
  {
    material: solution('hydrogen peroxide', '7722-84-1', 10),
    description: 'UN2984, Hydrogen, peroxide, aqueous solutions, 5.1, III',
    inner: '5 L',
  },
  {
    material: solution('hydrogen peroxide', '7722-84-1', 30),
    description: 'UN2014, Hydrogen peroxide, aqueous solutions, 5.1 (8), II',
    inner: '1 L',
  },
  {
    material: solution('hydrogen peroxide', '7722-84-1', 50),
    description: 'UN2014, Hydrogen peroxide, aqueous solutions, 5.1 (8), II',
    inner: '1 L',
  },
  {
    material: solution('hydrogen peroxide', '7722-84-1', 65),
    description: 'UN2015, Hydrogen peroxide aqueous solutions, stabilized, 5.1 (8), I',
    inner: null,
  },
  {
    material: solution('ammonia', '7664-41-7', 28),
    description: 'UN2672, Ammonia solution, 8, III',
    inner: '5 L',
  },
  {
    material: solution('sulphuric acid', '7664-93-9', 60, { pH: 0 }),
    description: 'UN1830, Sulfuric acid, 8, II',
    inner: '1 L',
  },
  {
    material: solution('nitric acid', '7697-37-2', 68, { pH: 0 }),
    description: 'UN2031, Nitric acid, 8 (5.1), II',
    inner: '1 L',
  },
  {
    material: solution('nitric acid', '7697-37-2', 30, { pH: 0 }),
    description: 'UN2031, Nitric acid, 8, II',
    inner: '1 L',
  },
  {
    material: solution('formaldehyde', '50-00-0', 37, { flash: '64 C' }),
    description: 'UN2209, Formaldehyde solutions, 8, III',
    inner: '5 L',
  },
];

describe('an entry found by name alone', () => {
  // Rows UN1199 (Furaldehydes, 6.1 with 3, II) and UN1157 (Diisobutyl ketone, 3, III) of 172.101; flash points from memory.
  it.each([
    [
      pure('Diisobutyl ketone', '108-83-8', { flash: '49 C', boil: 168 }),
      'UN1157, Diisobutyl ketone, 3, III',
    ],
    [pure('furaldehydes', '98-01-1', { flash: '60 C', boil: 162 }), 'UN1199, Furaldehydes, 6.1 (3), II'],
  ])('%#', async (material, description) => {
    expect(described(await ship(material))).toBe(description);
  });
});

describe('an entry that names its concentration or is met by flash and boiling point', () => {
  it('is held against a row of 49 CFR 172.101, and no two are the same', () => {
    for (const { description } of named) expect(lawRows(description), description).not.toEqual([]);
    expect(new Set(named.map(({ material }) => JSON.stringify(material))).size).toBe(named.length);
    expect(named.length).toBeGreaterThanOrEqual(38);
  });
  it.each(
    named.map(
      each => [`${each.material.formula[0]!.name} ${each.material.formula[0]!.percent} %`, each] as const,
    ),
  )('%s', async (_, { material, description, inner }) => {
    const answer = await ship(material);
    expect(described(answer)).toBe(description);
    expect(answer.limitedQuantity?.innerLimit ?? null).toBe(inner);
  });
});
