const NO_BREAK_SPACE = '\u00A0';

// Unit symbols of the SI and of US customary measure, as they stand after a number.
const UNITS = [
  '[mµukc]?[gLlm](?:[23²³])?',
  'lb|lbs|oz|fl|gal|qt|pt|in|ft|psi|bar|[kM]?Pa|[kM]?J|kcal|K|°C|°F|C|F|s|h|min|d|ppm|ppb|Hz|V|W|%|‰|mol|cSt|mPa',
].join('|');

const TIES: readonly RegExp[] = [
  // 946 mL, 12.5 %, 1.09 g/mL, 4400 mg/kg
  new RegExp(`(?<=\\d) (?=(?:${UNITS})(?:/[A-Za-z]{1,3}[23²³]?)*(?![\\p{L}\\d]))`, 'gu'),
  // 32 fl oz
  /(?<=\d[ \u00A0]fl) (?=oz\b)/gu,
  // ≥ 5, < 3, ± 2, § 6
  /(?<=[≤≥<>=≈±§×]) (?=[\d.])/gu,
  // 2 % ≤ C: the sign stays with what it follows
  /(?<=[\d%]) (?=[≤≥<>=≈±×])/gu,
  // 1 - 5, 10 to 20 keep the dash with the number before it
  /(?<=\d) (?=[–-] ?\d)/gu,
  // Annex, section and similar numbers
  /(?<=\b(?:[Ss]ection|SECTION|[Aa]rticle|[Aa]nnex|[Pp]age|[Pp]art|[Nn]o\.|CAS|UN|CFR)) (?=[\dIVX])/gu,
  // 29 CFR
  /(?<=\d) (?=CFR\b)/gu,
];

/** What one of the ties needs on one of its sides: most paragraphs have none of it. */
const TIED = /[\d≤≥<>=≈±×§]| [IVX]/u;

/** Replaces by no-break spaces those spaces at which a number would part from its unit, sign or heading word. */
export const keepTogether = (text: string): string =>
  TIED.test(text) ? TIES.reduce((result, tie) => result.replace(tie, NO_BREAK_SPACE), text) : text;
