import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { divide, type Probe } from '../../src/headroom/cells.ts';

const turnAt = (at: Fraction) => ({ near: at.valueOf(), error: 0, exact: () => at });

/** Counts the thresholds passed, as a chain of comparisons would that stops at the first not passed. */
const counting =
  (thresholds: readonly Fraction[]): Probe<number> =>
  (x, tell) => {
    for (const [i, threshold] of thresholds.entries()) {
      tell?.(turnAt(threshold));
      if (x.lt(threshold)) return i;
    }
    return thresholds.length;
  };

describe('divide', () => {
  it('finds every threshold of a chain of comparisons, whatever the order in which they are made', () => {
    const part = fc.tuple(fc.integer({ min: 1, max: 9999 }), fc.integer({ min: 1, max: 97 }));
    fc.assert(
      fc.property(fc.array(part, { maxLength: 12 }), parts => {
        const thresholds = parts
          .map(([n, d]) => new Fraction(n, d).mod(100))
          .filter(each => each.gt(0))
          .sort((a, b) => a.compare(b));
        const cells = divide(new Fraction(0), new Fraction(100), counting(thresholds));
        for (const { from, to, found } of cells) {
          const within = from.add(to).div(2);
          expect(found).toBe(thresholds.filter(each => each.lte(within)).length);
        }
        const edges = new Set(cells.map(({ from }) => from.toFraction()));
        for (const each of thresholds) expect(edges.has(each.toFraction())).toBe(true);
      }),
    );
  });

  it('leaves no gap: values and intervals take turns from end to end', () => {
    const cells = divide(
      new Fraction(0),
      new Fraction(100),
      counting([new Fraction(1, 3), new Fraction(50)]),
    );
    expect(cells.map(({ from, to }) => `${from.toFraction()}..${to.toFraction()}`)).toEqual([
      '0..0',
      '0..1/3',
      '1/3..1/3',
      '1/3..50',
      '50..50',
      '50..100',
      '100..100',
    ]);
  });

  it('tells thresholds apart that are one double', () => {
    const close = new Fraction(1).add(new Fraction(1, 10n ** 30n));
    const cells = divide(new Fraction(0), new Fraction(2), counting([new Fraction(1), close]));
    expect(cells.filter(({ from, to }) => from.lt(to)).map(({ found }) => found)).toEqual([0, 1, 2]);
  });

  it('a range of no width is one value', () => {
    expect(divide(new Fraction(5), new Fraction(5), counting([new Fraction(5)]))).toHaveLength(1);
  });
});
