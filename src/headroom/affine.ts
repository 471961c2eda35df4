import Fraction from 'fraction.js';
import { Exact } from '../quantity/exact.ts';
import type { Part } from '../quantity/sum.ts';

/** A quantity that moves in a straight line with the percent x of the varied constituent: start + slope * x. */
export interface Affine {
  readonly start: Fraction;
  readonly slope: Fraction;
}

const none = new Fraction(0);

/** Value at x, exactly. */
export const valueAt = ({ start, slope }: Affine, x: Fraction): Fraction => start.add(slope.mul(x));

/** Where a line meets a level; null where it never does or lies on it throughout. */
export const crossing = ({ start, slope }: Affine, level: Fraction): Fraction | null =>
  slope.equals(0) ? null : level.sub(start).div(slope);

/**
 * Where the sum of a comparison meets its limit.
 * @param lines amounts that move with x; every other amount stands still.
 */
export function crossingOf(
  parts: readonly Part[],
  limit: number,
  lines: ReadonlyMap<Exact, Affine>,
): Fraction | null {
  if (!parts.some(({ amount }) => lines.has(amount))) return null;
  let start = none;
  let slope = none;
  for (const { amount, weight, over } of parts) {
    const line = lines.get(amount);
    const factor = over ? Exact.decimal(weight).exact.div(over.exact) : Exact.decimal(weight).exact;
    start = start.add((line?.start ?? amount.exact).mul(factor));
    if (line) slope = slope.add(line.slope.mul(factor));
  }
  return crossing({ start, slope }, Exact.decimal(limit).exact);
}
