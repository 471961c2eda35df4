import Fraction from 'fraction.js';
import { Exact } from '../quantity/exact.ts';
import type { Part } from '../quantity/sum.ts';
import type { Turn } from './cells.ts';

/** A quantity that moves in a straight line with the percent x of the varied constituent: start + slope * x. */
export interface Affine {
  readonly start: Exact;
  readonly slope: Exact;
}

const none = new Fraction(0);

/** Value at x, exactly. */
export const valueAt = ({ start, slope }: Affine, x: Fraction): Fraction =>
  start.exact.add(slope.exact.mul(x));

// Relative rounding error of a sum of some hundred doubles stays far below this.
const ROUNDING = 1e-12;

/**
 * Where the sum of a comparison meets its limit: quickly in doubles, and exactly when asked.
 * @param lines amounts that move with x; every other amount stands still.
 * @returns null where the sum does not move.
 */
export function turnOf(
  parts: readonly Part[],
  limit: number,
  lines: ReadonlyMap<Exact, Affine>,
): Turn | null {
  let moves = false;
  let start = 0;
  let slope = 0;
  let size = Math.abs(limit);
  for (const { amount, weight, over } of parts) {
    const line = lines.get(amount);
    const factor = over ? weight / over.value : weight;
    const standing = (line ? line.start.value : amount.value) * factor;
    start += standing;
    size += Math.abs(standing);
    if (!line || line.slope.value === 0) continue;
    moves = true;
    slope += line.slope.value * factor;
    size += Math.abs(line.slope.value * factor) * 100;
  }
  if (!moves) return null;
  return {
    near: (limit - start) / slope,
    error: (ROUNDING * size) / Math.abs(slope),
    exact: () => exactTurn(parts, limit, lines),
  };
}

function exactTurn(
  parts: readonly Part[],
  limit: number,
  lines: ReadonlyMap<Exact, Affine>,
): Fraction | null {
  let start = none;
  let slope = none;
  for (const { amount, weight, over } of parts) {
    const line = lines.get(amount);
    const factor = over ? Exact.decimal(weight).exact.div(over.exact) : Exact.decimal(weight).exact;
    start = start.add((line?.start ?? amount).exact.mul(factor));
    if (line) slope = slope.add(line.slope.exact.mul(factor));
  }
  return slope.equals(0) ? null : Exact.decimal(limit).exact.sub(start).div(slope);
}
