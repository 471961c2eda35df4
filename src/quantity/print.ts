/** How numbers, signs and units are set: plain for terminals and data, typographic for documents. */
export interface Style {
  /** A number with the significant digits of the style. */
  show(value: number): string;
  /** A number beside the limit it was held against: with all its digits where fewer would print the limit. */
  beside(value: number, limit: number): string;
  readonly signs: Readonly<Record<'>=' | '<=' | '>' | '<', string>>;
  readonly celsius: string;
  readonly squareMillimetresPerSecond: string;
}

const MOST_SHOWN = 5_000;

/** Prints numbers with at most so many significant digits, never with an exponent. */
function printer(digits: number): Pick<Style, 'show' | 'beside'> {
  const shown = new Map<number, string>();
  const show = (value: number): string => {
    const known = shown.get(value);
    if (known !== undefined) return known;
    const whole = withoutExponent(value);
    const text = whole.length <= digits + 1 ? whole : withoutExponent(Number(value.toPrecision(digits)));
    // The same percents and limits are printed again and again; what is kept stays bounded.
    if (shown.size >= MOST_SHOWN) shown.clear();
    shown.set(value, text);
    return text;
  };
  const beside = (value: number, limit: number): string =>
    value !== limit && show(value) === show(limit) ? withoutExponent(value) : show(value);
  return { show, beside };
}

/** All digits of a double, written out: `0.0000001`, not `1e-7`. */
export function withoutExponent(value: number): string {
  const text = String(value);
  return text.includes('e')
    ? value.toLocaleString('en-US', { maximumFractionDigits: 20, useGrouping: false })
    : text;
}

/** For terminals, work sheets and data. */
export const plain: Style = {
  ...printer(6),
  signs: { '>=': '>=', '<=': '<=', '>': '>', '<': '<' },
  celsius: 'C',
  squareMillimetresPerSecond: 'mm2/s',
};

/** For documents that leave the shop. */
export const typographic: Style = {
  ...printer(4),
  signs: { '>=': '≥', '<=': '≤', '>': '>', '<': '<' },
  celsius: '°C',
  squareMillimetresPerSecond: 'mm²/s',
};

/** A number as printed in a working: at most six significant digits. */
export const { show } = plain;

/** A printed number with another decimal mark. */
export const marked = (text: string, decimalMark: string): string =>
  decimalMark === '.' ? text : text.replaceAll(/(?<![\d.])(\d+)\.(\d+)(?![\d.])/gu, `$1${decimalMark}$2`);

/** The typographic style with the decimal mark of a language. */
export const typographicWith = (decimalMark: string): Style =>
  decimalMark === '.'
    ? typographic
    : {
        ...typographic,
        show: value => marked(typographic.show(value), decimalMark),
        beside: (value, limit) => marked(typographic.beside(value, limit), decimalMark),
      };
