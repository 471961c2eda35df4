import { describe, expect, it } from 'vitest';
import { expand, formulaOf, messages, percents } from './_formula.ts';

const water = { name: 'water', amount: 'balance' };

describe('ranges', () => {
  it('are computed at every corner, the balance with them', () => {
    const formula = formulaOf([{ name: 'a', percent: [1, 2] }, { name: 'b', percent: [10, 20] }, water]);
    expect(percents(formula)).toEqual({ water: '78..89', b: '10..20', a: '1..2' });
    expect(formula.corners.map(corner => corner.map(({ value }) => value)).sort()).toEqual([
      [78, 20, 2],
      [79, 20, 1],
      [88, 10, 2],
      [89, 10, 1],
    ]);
  });

  it('of raw materials multiply with those of the formula', () => {
    const drum = { name: 'drum', formula: [{ name: 'a', percent: [10, 20] }, water] };
    const formula = formulaOf([{ use: drum, percent: [40, 50] }, { name: 'b', percent: 1 }, water]);
    expect(formula.corners).toHaveLength(4);
    expect(percents(formula)).toEqual({ water: '89..95', a: '4..10', b: '1' });
  });

  it('must leave the balance something at every corner', () => {
    expect(
      messages(expand([{ name: 'a', percent: [50, 70] }, { name: 'b', percent: [30, 40] }, water]))[0],
    ).toMatch(/as much as 110 %: nothing is left for it -> take 10 % out, or narrow the ranges/);
  });

  it('without a balance must be able to make 100 %', () => {
    expect(
      expand([
        { name: 'a', percent: [1, 2] },
        { name: 'b', percent: [97, 99] },
      ]).ok,
    ).toBe(true);
    expect(
      messages(
        expand([
          { name: 'a', percent: [1, 2] },
          { name: 'b', percent: [90, 97] },
        ]),
      )[0],
    ).toMatch(/at most 99 %: 1 % is missing/);
    expect(
      messages(
        expand([
          { name: 'a', percent: [4, 5] },
          { name: 'b', percent: [97, 99] },
        ]),
      )[0],
    ).toMatch(/at least 101 %: 1 % too much/);
  });

  it('are all combined up to ten, and each turned by itself beyond', () => {
    const lines = (count: number) => [
      ...Array.from({ length: count }, (_, i) => ({ name: `s${i}`, percent: [1, 2] })),
      water,
    ];
    const ten = expand(lines(10));
    expect(ten.ok && ten.value.corners.length).toBe(1024);
    expect(ten.diagnostics).toEqual([]);
    const eleven = expand(lines(11));
    expect(eleven.ok && eleven.value.corners.length).toBe(2 + 2 * 11);
    expect(eleven.diagnostics).toMatchObject([{ code: 'many-ranges', severity: 'warning' }]);
    expect(eleven.ok && percents(eleven.value)).toMatchObject({ water: '78..89', s0: '1..2' });
  });
});
