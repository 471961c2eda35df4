import { describe, expect, it } from 'vitest';
import { expand, formulaOf, messages, percents } from './_formula.ts';

const water = { name: 'water', amount: 'balance' };

describe('ranges', () => {
  it('leave the balance what they do not take', () => {
    const formula = formulaOf([{ name: 'a', percent: [1, 2] }, { name: 'b', percent: [10, 20] }, water]);
    expect(percents(formula)).toEqual({ water: '78..89', b: '10..20', a: '1..2' });
    expect(formula.most([0, 1, -1]).map(({ value }) => value)).toEqual([79, 20, 1]);
    expect(formula.most([1, 0, 0]).map(({ value }) => value)).toEqual([89, 10, 1]);
  });

  it('of raw materials multiply with those of the formula', () => {
    const drum = { name: 'drum', formula: [{ name: 'a', percent: [10, 20] }, water] };
    const formula = formulaOf([{ use: drum, percent: [40, 50] }, { name: 'b', percent: 1 }, water]);
    expect(percents(formula)).toEqual({ water: '89..95', a: '4..10', b: '1' });
    expect(formula.most([0, 1, 0]).map(({ value }) => value)).toEqual([89, 10, 1]);
  });

  it('give way to each other where together they would exceed 100 %', () => {
    const formula = formulaOf([{ name: 'a', percent: [50, 70] }, { name: 'b', percent: [30, 40] }, water]);
    expect(percents(formula)).toEqual({ a: '50..70', b: '30..40', water: '0..20' });
    expect(formula.most([2, 1, 0]).map(({ value }) => value)).toEqual([70, 30, 0]);
  });

  it('that cannot stand together are not used', () => {
    const formula = formulaOf([
      { name: 'a', percent: [2, 4] },
      { name: 'b', percent: [2, 4] },
      { name: 'c', percent: [96, 97] },
    ]);
    expect(percents(formula)).toEqual({ c: '96', a: '2', b: '2' });
  });

  it('must leave the balance something at their low ends', () => {
    expect(
      messages(expand([{ name: 'a', percent: [70, 80] }, { name: 'b', percent: [40, 50] }, water]))[0],
    ).toMatch(/at least 110 %: nothing is left for it -> take 10 % out/);
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

  it('may be any number', () => {
    const lines = Array.from({ length: 60 }, (_, i) => ({ name: `s${i}`, percent: [0.5, 1] }));
    const formula = formulaOf([...lines, water]);
    expect(percents(formula)).toMatchObject({ water: '40..70', s0: '1/2..1' });
    expect(formula.most(formula.constituents.map(() => 0)).reduce((sum, { value }) => sum + value, 0)).toBe(
      100,
    );
  });
});
