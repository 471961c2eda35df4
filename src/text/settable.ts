const REPLACEMENTS: readonly (readonly [RegExp, string])[] = [
  [/[\u00A0\u202F]/gu, ' '],
  [/[\u2010\u2011]/gu, '-'],
  [/[\u00AD\u200B\u2060\uFEFF]/gu, ''],
];

/**
 * The characters that are really set: composed (NFC), no-break spaces and hyphens as plain ones, break hints
 * dropped, so that a search in the finished file finds the words as a reader would type them.
 */
export const settable = (text: string): string =>
  REPLACEMENTS.reduce(
    (result, [pattern, replacement]) => result.replace(pattern, replacement),
    text.normalize('NFC'),
  );
