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
  it('constituents sum to 100 % exactly at every corner where there is a balance', () => {
    const ranged = fc
      .array(fc.tuple(tenths, fc.nat(9)), { minLength: 1, maxLength: 6 })
      .map(shares => [
        ...shares.map(([low, more], i): Line => ({ name: `s${i}`, percent: [low / 10, (low + more) / 10] })),
        water,
      ]);
    fc.assert(
      fc.property(ranged, formula => {
        const { corners, constituents } = formulaOf(formula);
        for (const corner of corners) {
          expect(corner).toHaveLength(constituents.length);
          expect(corner.reduce((sum, { exact }) => sum.add(exact), new Fraction(0)).equals(100)).toBe(true);
          corner.forEach(({ exact }, i) => {
            expect(exact.gte(constituents[i]!.low.exact) && exact.lte(constituents[i]!.high.exact)).toBe(
              true,
            );
          });
        }
      }),
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
