import Fraction from 'fraction.js';

/**
 * An exact rational number beside the double nearest to it. Comparisons use the double where it is clear
 * of the limit and the fraction where it is not, so that 0.1 + 0.2 meets a limit of 0.3.
 */
export class Exact {
  /** The double nearest to the exact value. */
  readonly value: number;
  #source: string | number | Fraction;

  private constructor(value: number, source: string | number | Fraction) {
    this.value = value;
    this.#source = source;
  }

  /**
   * From a decimal as written: `4.1` means 41/10, not the double nearest to it.
   * @throws RangeError on anything but a finite number.
   */
  static decimal(written: string | number): Exact {
    const value = Number(written);
    if (!Number.isFinite(value)) throw new RangeError(`not a number: ${written}`);
    return new Exact(value, written);
  }

  static fraction(fraction: Fraction): Exact {
    return new Exact(fraction.valueOf(), fraction);
  }

  /** The exact value. */
  get exact(): Fraction {
    if (!(this.#source instanceof Fraction)) this.#source = new Fraction(decimalText(this.#source));
    return this.#source;
  }
}

// fraction.js reads no exponents, and String(1e-7) has one.
function decimalText(written: string | number): string {
  const text = String(written).trim();
  const match = /^([+-]?)(\d*)\.?(\d*)[eE]([+-]?\d+)$/.exec(text);
  if (!match) return text;
  const [, sign, whole, part, exponent] = match;
  const digits = `${whole}${part}`;
  const point = whole!.length + Number(exponent);
  if (point <= 0) return `${sign}0.${'0'.repeat(-point)}${digits}`;
  if (point >= digits.length) return `${sign}${digits}${'0'.repeat(point - digits.length)}`;
  return `${sign}${digits.slice(0, point)}.${digits.slice(point)}`;
}

export const zero: Exact = Exact.decimal(0);
export const hundred: Exact = Exact.decimal(100);
