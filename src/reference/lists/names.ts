/** Words after which a name in a list says how it is measured or in what form, not what it is. */
const FORM =
  /,? (?:total (?:dust|particulate)|respirable (?:dust|fraction)|dusts? and mists?|dust|fume|vapor|mist|metal)$/u;

/** What stands in brackets and is no name: `as F`, `all isomers`, `less than 1% crystalline silica`. */
const NO_NAME =
  /^(?:as |all |see |less |greater |\d|o-|mixed|containing|not |tech|resp|airborne|mist|yellow)/u;

const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/sulph/gu, 'sulf'],
  [/aluminium/gu, 'aluminum'],
  [/caesium/gu, 'cesium'],
  [/\bvapour/gu, 'vapor'],
  [/\bfib(?:re|er)/gu, 'fiber'],
];

/** What one of the spellings begins with: most names have none of it. */
const SPELLED_OTHERWISE = /sulph|aluminium|caesium|vapour|fibre/u;

/** A name in lower case and American spelling. */
export const spelled = (name: string): string => {
  const lower = name.normalize('NFKC').toLowerCase();
  if (!SPELLED_OTHERWISE.test(lower)) return lower;
  return SPELLINGS.reduce((text, [pattern, put]) => text.replace(pattern, put), lower);
};

/** What a record may add to the name of a substance: its strength or that it is dissolved. */
const ADDED =
  /\s*[,(]?\s*(?:(?:approx\.?|ca\.?|min\.?)?\s*\d+(?:[.,]\d+)?\s*(?:%|percent).*|(?:aqueous )?solution|aqueous)\)?$/u;

/** Letters, digits, commas and primes of a name that is spelled already. Classes of Unicode cost time: most names are ASCII. */
const keyOf = (plain: string): string =>
  /^[ -~]*$/.test(plain) ? plain.replace(/[^a-z0-9,'+]+/g, '') : plain.replace(/[^\p{L}\p{N},'+]/gu, '');

/** Key under which two spellings of a name meet: letters, digits, commas and primes alone. */
export const nameKey = (name: string): string => keyOf(spelled(name));

/** Keys of a name as a record writes it: whole, and without what a record adds. */
export const soughtKeys = (name: string): readonly string[] =>
  [...new Set([nameKey(name), nameKey(spelled(name).trim().replace(ADDED, ''))])].filter(key => key !== '');

/** Brackets that make an entry one for compounds, so that the name before them is not what is listed. */
const COMPOUNDS = /\b(?:compounds?|salts?|oxides?)\b/u;

/** Keys of an entry of a list: the name without the form that the entry is for, and the names in its brackets. */
export function entryKeys(name: string): readonly string[] {
  const plain = spelled(name);
  if (!plain.includes('(')) return keysOf([plain, plain.replace(FORM, '')]);
  if (/\([^()]*\)/u.test(plain) && COMPOUNDS.test(plain)) return [keyOf(plain)];
  const bracketed = [...plain.matchAll(/ \(([^()]{4,})\)/gu)]
    .map(([, inner]) => inner!)
    .filter(inner => !NO_NAME.test(inner));
  const outside = plain.replace(/ \([^()]*\)/gu, '').replace(FORM, '');
  return keysOf([plain, outside, ...bracketed]);
}

const keysOf = (names: readonly string[]): readonly string[] =>
  [...new Set(names.map(keyOf))].filter(key => key.length > 2);
