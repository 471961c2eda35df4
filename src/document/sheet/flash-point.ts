import { marked } from '../../quantity/print.ts';
import type { Measured } from '../../record/product-record.ts';
import type { SheetWords } from '../../words/sheet-words.ts';
import type { Words } from '../../words/words.ts';
import { fill } from './fill.ts';
import type { SheetInput } from './input.ts';
import { temperatures } from './units.ts';

export type PropertyWords = SheetWords['properties'];

/** A measured value with its method and source. */
export const valued = (
  { sheet: { properties: words }, decimalMark }: Pick<Words, 'sheet' | 'decimalMark'>,
  { method, source }: Measured<unknown>,
  text: string,
): string =>
  [
    marked(text, decimalMark),
    method && fill(words.method, { method }),
    source && fill(words.source, { source }),
  ]
    .filter(Boolean)
    .join('; ');

/** Flash point with its cup, method and source; null where the record has none. */
export function flashPoint(input: SheetInput): string | null {
  const { record, words: language } = input;
  const { properties: words } = language.sheet;
  const point = record.properties.flashPoint;
  if (!point) return null;
  const { kind } = point.value;
  if (kind === 'none') return valued(language, point, words.noFlashPoint);
  const cup = point.value.cup && words.cup[point.value.cup];
  const bare = point.written.replace(/\s*\(?\s*(?:closed|open)(?:[ -]cup)?\s*\)?\s*$/iu, '');
  return valued(language, point, [temperatures(bare, input), cup].filter(Boolean).join(', '));
}
