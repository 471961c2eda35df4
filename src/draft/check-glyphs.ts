import type { ProductRecord } from '../record/product-record.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import type { FontLibrary } from '../text/glyph-run.ts';

/** Whether a record holds characters that a typeface may lack. */
export const hasRareCharacters = ({ raw, maker }: ProductRecord): boolean =>
  /[^ -ÿ]/.test(JSON.stringify([raw, maker]));

/** Characters of a record that the typeface of label and sheet lacks, at their field; without them neither is made. */
export function checkGlyphs({ file, raw, maker }: ProductRecord, fonts: FontLibrary): readonly Diagnostic[] {
  const found: Diagnostic[] = [];
  const walk = (value: unknown, path: string): void => {
    if (typeof value === 'string') {
      const missing = fonts.missing(value, 'regular');
      if (missing.length > 0) found.push(told(missing, file, path));
    } else if (Array.isArray(value)) value.forEach((each, index) => void walk(each, `${path}[${index}]`));
    else if (typeof value === 'object' && value !== null)
      for (const [key, each] of Object.entries(value)) walk(each, path === '' ? key : `${path}.${key}`);
  };
  walk(raw, '');
  const written = typeof (raw as { maker?: unknown } | null)?.maker === 'object';
  if (maker && !written) walk(maker, 'maker');
  return found;
}

const told = (missing: readonly string[], file: string, path: string): Diagnostic => ({
  code: 'missing-glyph',
  severity: 'error',
  message: `the typeface of label and sheet lacks ${missing.map(character => `\`${character}\` (U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')})`).join(', ')}`,
  hint: 'write it in another way: the face has Latin, Greek and Cyrillic letters',
  at: { file },
  path,
});
