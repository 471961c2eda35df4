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

/** A number with at most three significant figures, without trailing zeros and without an exponent. */
export function figure(value: number): string {
  const rounded = Number(value.toPrecision(3));
  return rounded.toLocaleString('en-US', { maximumFractionDigits: 10, useGrouping: false });
}
