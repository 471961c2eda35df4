import { marked } from '../../quantity/print.ts';

/**
 * Fills the `{fields}` of a phrase.
 * @throws RangeError where a field has no value: a defect of the phrase, not of the record.
 */
export function fill(phrase: string, values: Readonly<Record<string, string | number>>): string {
  return phrase.replace(/\{([a-zA-Z]+)\}/gu, (_, name: string) => {
    const value = values[name];
    if (value === undefined) throw new RangeError(`no value for {${name}} in "${phrase}"`);
    return String(value);
  });
}

/** First letter as a capital, except of a symbol such as pH. */
export const capitalized = (text: string): string =>
  /^\p{Ll}\p{Lu}/u.test(text) ? text : text.charAt(0).toUpperCase() + text.slice(1);

/** A number with so many significant figures, three unless told, without trailing zeros and without an exponent. */
export function figure(value: number, figures = 3, decimalMark = '.'): string {
  const rounded = Number(value.toPrecision(figures));
  const size = Math.abs(rounded);
  // Numbers that JavaScript writes without an exponent, and with no more than ten decimals; the rest takes its time.
  const short = figures <= 4 && size >= 1e-6 && size < 1e15;
  return marked(
    short
      ? String(rounded)
      : rounded.toLocaleString('en-US', { maximumFractionDigits: 10, useGrouping: false }),
    decimalMark,
  );
}
