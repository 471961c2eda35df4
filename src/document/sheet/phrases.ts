import composition from '../../../templates/sheets/phrases/composition.json' with { type: 'json' };
import effects from '../../../templates/sheets/phrases/effects.json' with { type: 'json' };
import exposure from '../../../templates/sheets/phrases/exposure.json' with { type: 'json' };
import frame from '../../../templates/sheets/phrases/frame.json' with { type: 'json' };
import further from '../../../templates/sheets/phrases/further.json' with { type: 'json' };
import identification from '../../../templates/sheets/phrases/identification.json' with { type: 'json' };
import measures from '../../../templates/sheets/phrases/measures.json' with { type: 'json' };
import other from '../../../templates/sheets/phrases/other.json' with { type: 'json' };
import properties from '../../../templates/sheets/phrases/properties.json' with { type: 'json' };
import toxicology from '../../../templates/sheets/phrases/toxicology.json' with { type: 'json' };

/** Sentences of our own for the sheet; `{name}` is filled in. */
export const phrases = {
  composition,
  effects,
  exposure,
  frame,
  further,
  identification,
  measures,
  other,
  properties,
  toxicology,
} as const;

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

const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/>=/gu, '≥'],
  [/<=/gu, '≤'],
  [/\b(mm|cm|m)2(?=\/|\b)/gu, '$1²'],
  [/\b(mm|cm|m)3(?=\/|\b)/gu, '$1³'],
  [/(\d) C\b(?!\.)/gu, '$1 °C'],
];

/** Signs and units as they are printed: `>=` as ≥, `mm2/s` as mm²/s. */
export const typeset = (text: string): string =>
  SIGNS.reduce((result, [pattern, sign]) => result.replace(pattern, sign), text);

/** A number with at most three significant figures, without trailing zeros and without an exponent. */
export function figure(value: number): string {
  const rounded = Number(value.toPrecision(3));
  return rounded.toLocaleString('en-US', { maximumFractionDigits: 10, useGrouping: false });
}

/** A result or a share in a line of arithmetic; neither an identifier nor a paragraph. */
const REPORTED = /(?<![\w.,-])\d+(?:\.\d+)?(?= (?:%|mg\/|ppm|[<>=])|;|$)/gu;

/**
 * Arithmetic with its numbers at four significant figures at most. A number that would be rounded to another
 * number of the same line, such as the limit that it misses, stays as it is.
 */
export function rounded(working: string): string {
  const written = new Set(working.match(/\d+(?:\.\d+)?/gu)?.map(Number));
  return working.replace(REPORTED, text => {
    const value = Number(Number(text).toPrecision(4));
    const short = value.toLocaleString('en-US', { maximumFractionDigits: 10, useGrouping: false });
    return short.length >= text.length || written.has(value) ? text : short;
  });
}
