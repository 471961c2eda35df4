import Fraction from 'fraction.js';
import type { Exact } from '../quantity/exact.ts';
import { findUnit } from '../quantity/units.ts';

/** What turns a percent of the batch into what is weighed or metered. */
export interface Shop {
  /** What percents are of. */
  readonly by: 'weight' | 'volume';
  /** Grams of the batch; null where the record gives none. */
  readonly batchGrams: Exact | null;
  /** g/mL of the raw material; null where none is known. */
  readonly density: Exact | null;
}

/** An amount of a raw material in a batch; null where the record does not say enough. */
export interface ShopAmount {
  /** Avoirdupois pounds per batch. */
  readonly pounds: Fraction | null;
  /** US gallons per batch. */
  readonly gallons: Fraction | null;
  /** Parts of the product that hold one part of the raw material; null where it holds none. */
  readonly onePartTo: Fraction | null;
}

const [pound, gallon] = [findUnit('mass', 'lb')!.factor, findUnit('volume', 'gal')!.factor];

/**
 * An amount of a raw material in the units of the shop. The batch weighs the same whatever is in it.
 * @param percent of the batch.
 */
export function shopAmount(percent: Fraction, { batchGrams, density }: Shop): ShopAmount {
  const grams = batchGrams?.exact.mul(percent).div(100) ?? null;
  return {
    pounds: grams?.div(pound) ?? null,
    gallons: grams && density && grams.div(density.exact).div(gallon),
    onePartTo: percent.gt(0) ? new Fraction(100).div(percent) : null,
  };
}

const DIGITS = 4;

/** Rounded to four significant digits, to the side asked for: what is poured must not cross a limit by rounding. */
export function rounded(value: Fraction, to: 'down' | 'up' | 'nearest'): number {
  if (value.equals(0)) return 0;
  const places = DIGITS - 1 - Math.floor(Math.log10(Math.abs(value.valueOf())));
  const shift = new Fraction(10).pow(places) as Fraction;
  const moved = value.mul(shift);
  const whole = to === 'down' ? moved.floor() : to === 'up' ? moved.ceil() : moved.round();
  return whole.div(shift).valueOf();
}
