import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { formulaOf, type Line, percents } from './_formula.ts';

// Tenths of a percent, so that sums are exact in the lines as written too.
const tenths = fc.integer({ min: 1, max: 90 });
const named = (prefix: string, percent: number, i: number): Line => ({ name: `${prefix}${i}`, percent });
const water: Line = { name: 'water', amount: 'balance' };
const lines = (prefix: string) =>
  fc
    .array(tenths, { minLength: 1, maxLength: 8 })
    .map(shares => [...shares.map((share, i) => named(prefix, share / 10, i)), water]);
const units = fc.constantFrom('kg', 'g', 'lb', 'oz');

describe('laws of expansion', () => {
  const range = fc.tuple(tenths, fc.nat(60)).map(([low, more]) => [low / 10, (low + more) / 10] as const);
  const ranges = fc.array(range, { minLength: 1, maxLength: 30 });

  it('the worst composition for any sum is of 100 % and within the ranges, however many there are', () => {
    fc.assert(
      fc.property(ranges, fc.array(fc.double({ min: -9, max: 9, noNaN: true })), (shares, weights) => {
        const low = shares.reduce((sum, [least]) => sum + least, 0);
        fc.pre(low < 100);
        const formula = formulaOf([...shares.map((percent, i): Line => ({ name: `s${i}`, percent })), water]);
        const { constituents } = formula;
        const composition = formula.most(weights);
        const sum = composition.reduce((total, { exact }) => total.add(exact), new Fraction(0));
        expect(sum.equals(100)).toBe(true);
        composition.forEach(({ exact }, i) => {
          const within = exact.gte(constituents[i]!.low.exact) && exact.lte(constituents[i]!.high.exact);
          expect(within).toBe(true);
        });
      }),
    );
  });

  it('no other filling of 100 % has a greater sum', () => {
    fc.assert(
      fc.property(
        fc.array(range, { minLength: 2, maxLength: 6 }),
        fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 7, maxLength: 7 }),
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 }),
        (shares, weights, places) => {
          // Any mixture within the ranges that leaves the balance something.
          const other = shares.map(([low, high], i) => low + (high - low) * places[i]!);
          const rest = 100 - other.reduce((sum, each) => sum + each, 0);
          fc.pre(rest >= 0);
          const formula = formulaOf([
            ...shares.map((percent, i): Line => ({ name: `s${i}`, percent })),
            water,
          ]);
          const weightOf = (name: string) =>
            name === 'water' ? weights[6]! : weights[Number(name.slice(1))]!;
          const most = formula.most(formula.constituents.map(({ name }) => weightOf(name)));
          const found = formula.constituents.reduce(
            (sum, { name }, i) => sum + weightOf(name) * most[i]!.value,
            0,
          );
          const against = other.reduce((sum, each, i) => sum + weights[i]! * each, weights[6]! * rest);
          expect(found).toBeGreaterThanOrEqual(against - 1e-9);
        },
      ),
    );
  });

  it('weights of any units sum to 100 % exactly, and the order of lines changes nothing', () => {
    const weighed = fc.array(fc.tuple(fc.integer({ min: 1, max: 9999 }), units), {
      minLength: 1,
      maxLength: 8,
    });
    fc.assert(
      fc.property(weighed, fc.infiniteStream(fc.nat()), (amounts, order) => {
        const formula = amounts.map(
          ([amount, unit], i): Line => ({ name: `s${i}`, amount: `${amount / 100} ${unit}` }),
        );
        const shuffled = formula
          .map(line => ({ line, key: order.next().value }))
          .sort((a, b) => a.key - b.key)
          .map(({ line }) => line);
        const [straight, mixed] = [formulaOf(formula), formulaOf(shuffled)];
        expect(percents(mixed)).toEqual(percents(straight));
        expect(
          straight.constituents.reduce((sum, { low }) => sum.add(low.exact), new Fraction(0)).equals(100),
        ).toBe(true);
      }),
    );
  });

  it('comes in descending order', () => {
    fc.assert(
      fc.property(lines('s'), formula => {
        const highs = formulaOf(formula).constituents.map(({ high }) => high.value);
        expect(highs).toEqual([...highs].sort((a, b) => b - a));
      }),
    );
  });

  it('gives the same constituents for a raw material and for its lines', () => {
    fc.assert(
      fc.property(lines('m'), lines('s'), fc.integer({ min: 1, max: 25 }), (inner, outer, share) => {
        const nested = formulaOf([{ use: { name: 'drum', formula: inner }, percent: share }, ...outer]);
        const rest = 100 - inner.reduce((sum, { percent }) => sum + (Number(percent) || 0) * 10, 0) / 10;
        const split = inner.map(line => {
          const percent = new Fraction(String(line.percent ?? rest.toFixed(1))).mul(share).div(100);
          return { name: line.name, percent: percent.toString() };
        });
        const flat = formulaOf([...split, ...outer]);
        expect(percents(flat)).toEqual(percents(nested));
      }),
    );
  });
});
