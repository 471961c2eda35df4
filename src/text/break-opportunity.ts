/** What lies between two places of a text at which a line may end. */
export interface Piece {
  readonly start: number;
  /** End without the trailing space. */
  readonly end: number;
  /** End including the trailing space, where the next piece starts. */
  readonly next: number;
  /** The line must end here (a line feed in the text). */
  readonly mandatory: boolean;
}

// Places inside a word, after UAX #14 classes HY, BA and SY but stricter: a code, a number or a unit never parts.
const INSIDE: readonly RegExp[] = [
  /(?<=\p{L}{2}[-\u2010])(?=\p{L}{2})/gu,
  /(?<=\p{L}{3}\/)(?=\p{L}{3})/gu,
  /(?<=\p{L}[–—]|[—])(?=\p{L})/gu,
  /(?<=[\u00AD\u200B])(?=\S)/gu,
];

/** A sign after which one of them may be: most texts have none. */
const SIGN_INSIDE = /[-\u2010/–—\u00AD\u200B]/u;

const insideWord = (word: string): number[] => {
  const places = INSIDE.flatMap(pattern => [...word.matchAll(pattern)].map(({ index }) => index));
  return [...new Set(places)].filter(place => place > 0).sort((a, b) => a - b);
};

/**
 * Splits a text of Latin, Greek or Cyrillic script where a line may end: at spaces, line feeds, after hyphens and
 * slashes between words, at soft hyphens (which are not shown) and zero-width spaces.
 */
export const breakOpportunities = (text: string): Piece[] => {
  const pieces: Piece[] = [];
  const hasSigns = SIGN_INSIDE.test(text);
  for (const match of text.matchAll(/([^ \t\n]*)(\n|[ \t]+\n?|$)/gu)) {
    const [whole, word = '', gap = ''] = match;
    if (whole === '') continue;
    let start = match.index;
    for (const place of hasSigns && SIGN_INSIDE.test(word) ? insideWord(word) : []) {
      const end = match.index + place;
      pieces.push({ start, end, next: end, mandatory: false });
      start = end;
    }
    const end = match.index + word.length;
    pieces.push({ start, end, next: end + gap.length, mandatory: gap.includes('\n') });
  }
  return pieces;
};

const SIGNS = /(?<=[-+/_.,:;=&@])(?=.)/gu;

/** Places at which a word too long for any line may be forced apart: after signs, else after any character. */
export const forcedPlaces = (
  word: string,
): { readonly afterSigns: number[]; readonly anywhere: number[] } => ({
  afterSigns: [...word.matchAll(SIGNS)].map(({ index }) => index),
  anywhere: [...new Intl.Segmenter().segment(word)].map(({ index }) => index).filter(index => index > 0),
});
