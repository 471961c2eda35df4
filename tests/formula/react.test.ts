import { describe, expect, it } from 'vitest';
import { expand, formulaOf, type Line } from './_formula.ts';

// Molar masses from the standard atomic weights (IUPAC 2021, abridged): C 12.011, H 1.008, O 15.999, Na 22.990.
const neutralization = {
  consumes: [
    { of: '77-92-9', moles: 1, 'molar-mass': '192.123 g/mol' },
    { of: 'sodium hydroxide', moles: 3, 'molar-mass': '39.997 g/mol' },
  ],
  forms: [
    {
      name: 'trisodium citrate',
      cas: '68-04-2',
      moles: 1,
      'molar-mass': '258.069 g/mol',
      hazards: [],
      source: 'sheet',
    },
    { name: 'water', moles: 3, 'molar-mass': '18.015 g/mol' },
  ],
};
const lines = (acid: unknown, base: unknown): Line[] => [
  { name: 'citric acid', cas: '77-92-9', percent: acid },
  { name: 'sodium hydroxide', cas: '1310-73-2', percent: base },
  { name: 'water', amount: 'balance' },
];
const left = (acid: unknown, base: unknown) =>
  Object.fromEntries(
    formulaOf(lines(acid, base), { reacts: [neutralization] }).constituents.map(({ name, low, high }) => [
      name,
      [low.value, high.value],
    ]),
  );

describe('a reaction in the batch', () => {
  it('leaves the excess over, and loses no mass', () => {
    const found = left(5, 4);
    // 5 g of acid are 0.026025 mol and take 3 x 0.026025 mol of base: 3.1228 g of 4 g.
    expect(found['citric acid']).toBeUndefined();
    expect(found['sodium hydroxide']![0]).toBeCloseTo(0.8772, 3);
    expect(found['trisodium citrate']![0]).toBeCloseTo(6.7163, 3);
    expect(found.water![0]).toBeCloseTo(91 + 1.4065, 3);
    const total = Object.values(found).reduce((sum, [low]) => sum + low!, 0);
    expect(total).toBeCloseTo(100, 10);
  });

  it('leaves the acid over where there is more of it', () => {
    const found = left(5, 3);
    expect(found['sodium hydroxide']).toBeUndefined();
    expect(found['citric acid']![0]).toBeCloseTo(5 - (3 / 39.997 / 3) * 192.123, 4);
  });

  it('is worked out at both ends of a range', () => {
    const found = left([4, 6], 4);
    expect(found['sodium hydroxide']).toEqual([expect.closeTo(0.2527, 3), expect.closeTo(1.5018, 3)]);
    expect(found['citric acid']).toBeUndefined();
  });

  it('tells no line as empty that it uses up', () => {
    expect(expand(lines(5, 4), { reacts: [neutralization] }).diagnostics).toEqual([]);
  });

  it('refuses a reactant that is not in the formula', () => {
    const outcome = expand([{ name: 'water', percent: 100 }], { reacts: [neutralization] });
    expect(outcome.ok).toBe(false);
    expect(outcome.diagnostics.map(({ code }) => code)).toEqual(['reactant-missing', 'reactant-missing']);
  });
});
