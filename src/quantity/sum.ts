import Fraction from 'fraction.js';
import { Exact } from './exact.ts';

/** One term of an additive rule: amount x weight / over. */
export interface Part {
  readonly amount: Exact;
  /** A factor of the law or of the data, as a decimal. */
  readonly weight: number;
  /** A divisor, for example a concentration limit or an acute toxicity estimate. */
  readonly over?: Exact | undefined;
}

/** The sum as a double, for display. */
export function sumOf(parts: readonly Part[]): number {
  let sum = 0;
  for (const { amount, weight, over } of parts)
    sum += over === undefined ? amount.value * weight : (amount.value * weight) / over.value;
  return sum;
}

// Relative rounding error of a sum of some hundred doubles stays far below this.
const CLEAR = 1e-9;

/**
 * Compares a sum with a limit: negative below, 0 equal, positive above. Exact: near the limit the sum is
 * worked in rational numbers, so that 4.9 + 0.1 meets 5.
 */
export function compareSum(parts: readonly Part[], limit: number): number {
  const sum = sumOf(parts);
  if (Math.abs(sum - limit) > CLEAR * (Math.abs(sum) + Math.abs(limit))) return sum - limit;
  return exactSum(parts).compare(new Fraction(Exact.decimal(limit).exact));
}

/** Whether the sum reaches the limit. */
export const meets = (parts: readonly Part[], limit: number): boolean => compareSum(parts, limit) >= 0;

/** The parts of a sum times a factor. */
export const scaledBy = (parts: readonly Part[], factor: number): Part[] =>
  parts.map(part => ({ ...part, weight: part.weight * factor }));

/** Whether a sum times a factor, with another sum added, reaches the limit. */
export function meetsScaled(
  parts: readonly Part[],
  factor: number,
  more: readonly Part[],
  limit: number,
): boolean {
  const sum = sumOf(parts) * factor + sumOf(more);
  if (Math.abs(sum - limit) > CLEAR * (Math.abs(sum) + Math.abs(limit))) return sum > limit;
  return meets([...scaledBy(parts, factor), ...more], limit);
}

/** The exact sum. */
export function exactSum(parts: readonly Part[]): Fraction {
  let sum = new Fraction(0);
  for (const { amount, weight, over } of parts) {
    const term = amount.exact.mul(Exact.decimal(weight).exact);
    sum = sum.add(over === undefined ? term : term.div(over.exact));
  }
  return sum;
}

/** Compares one value with a limit, exactly. */
export function compare(value: Exact, limit: number): number {
  if (Math.abs(value.value - limit) > CLEAR * (Math.abs(value.value) + Math.abs(limit)))
    return value.value - limit;
  return value.exact.compare(Exact.decimal(limit).exact);
}

/** Compares two values, exactly; for sorting. */
export function compareValues(a: Exact, b: Exact): number {
  if (Math.abs(a.value - b.value) > CLEAR * (Math.abs(a.value) + Math.abs(b.value))) return a.value - b.value;
  return a.exact.compare(b.exact);
}

/** Whether a value reaches a limit. */
export const reaches = (value: Exact, limit: number): boolean => compare(value, limit) >= 0;

/** A double without the noise of its last digits: 29.759999999999998 is 29.76. */
export function tidy(value: number): number {
  const rounded = Math.round(value * 1e9) / 1e9;
  return Math.abs(rounded - value) <= 1e-13 * Math.abs(value) ? rounded : value;
}
