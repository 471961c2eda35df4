import type Fraction from 'fraction.js';
import { withoutExponent } from '../quantity/print.ts';

/** Digits that a decimal may take before the fraction is the shorter way to be exact. */
const MAX_DECIMALS = 12;

/** An exact percent: as a decimal where it ends, else as a fraction, `100/3`. */
export function exactText(percent: Fraction): string {
  const places = decimalsOf(percent);
  return places === null ? percent.toFraction() : percent.toString(Math.max(places, 1));
}

/** A percent for reading, without its sign: `4.9`, and `about 33.3333` where no decimal is exact. */
export function readableText(percent: Fraction): string {
  const exact = exactText(percent);
  return exact.includes('/') ? `about ${withoutExponent(Number(percent.valueOf().toPrecision(6)))}` : exact;
}

/** A percent for reading: `4.9 %`, `about 33.3333 %`. */
export const percentText = (percent: Fraction): string => `${readableText(percent)} %`;

/** A percent for the chart: at most five significant digits. */
export const shortText = (percent: Fraction): string => String(Number(percent.valueOf().toPrecision(5)));

// A fraction ends as a decimal where its denominator has no prime factor but 2 and 5.
function decimalsOf(percent: Fraction): number | null {
  let rest = percent.d;
  let twos = 0;
  let fives = 0;
  for (; rest % 2n === 0n; rest /= 2n) twos++;
  for (; rest % 5n === 0n; rest /= 5n) fives++;
  const places = Math.max(twos, fives);
  return rest === 1n && places <= MAX_DECIMALS ? places : null;
}
