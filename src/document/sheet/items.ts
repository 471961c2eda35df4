import type { SheetKey } from '../../record/sheet-keys.ts';
import { inTerms } from '../../words/in-terms.ts';
import type { Words } from '../../words/words.ts';
import { type ItemBody, type ItemState, paragraphs, type SheetItem } from './content.ts';
import { fill } from './fill.ts';
import type { SheetInput } from './input.ts';

/** A subheading as the data of a basis have it. */
export interface Subheading {
  readonly key: string;
  readonly heading: string;
  readonly letter?: string;
  /** Key of the record that fills it or says where it was searched for in vain. */
  readonly asks?: string | null;
  /** A second key that must say the same before the item counts as searched for. */
  readonly with?: string;
  /** What one look-up or one measurement answers for several subheadings. */
  readonly question?: string;
}

/** The body with what it lacks. */
export const complete = (
  { key, letter = '', heading, asks = null, question }: Subheading,
  state: ItemState,
  body: ItemBody,
): SheetItem => ({
  key,
  state,
  asks,
  question: question ?? null,
  letter,
  heading,
  figures: [],
  text: [],
  list: [],
  groups: [],
  table: null,
  values: [],
  notes: [],
  ...body,
});

/** The subheading in the language of the sheet. */
export const headed = <T extends Subheading>(subheading: T, { sheet }: Pick<Words, 'sheet'>): T => ({
  ...subheading,
  heading: inTerms(sheet.terms.headings, subheading.heading),
});

/** The item with its state: what the record gives for it or says of a search goes before "not yet searched". */
export function itemOf(
  subheading: Subheading,
  body: ItemBody | undefined,
  { record, words }: SheetInput,
): SheetItem {
  const item = headed(subheading, words);
  if (body && body.source !== 'none') return complete(item, 'filled', body);
  const asks = subheading.asks as SheetKey | null | undefined;
  const notes = body?.notes ?? [];
  const own = asks && record.sheet[asks];
  if (own) return complete(item, 'filled', { text: paragraphs(own), notes, source: 'product record' });
  const by = searchedBy([asks, subheading.with], record.sheetSearched);
  const { frame } = words.sheet;
  return by
    ? complete(item, 'searched', {
        text: [fill(frame.searched, { by })],
        notes,
        source: 'product record',
      })
    : complete(item, 'open', { text: [frame.open], notes, source: 'none' });
}

/** Who searched for all that the keys ask, and where; null where one of them says nothing. */
function searchedBy(
  keys: readonly (string | null | undefined)[],
  searched: Readonly<Partial<Record<SheetKey, string>>>,
): string | null {
  const asked = keys.filter(key => key !== null && key !== undefined) as readonly SheetKey[];
  const texts = asked.map(key => searched[key]);
  return asked.length > 0 && texts.every(text => text !== undefined) ? [...new Set(texts)].join('; ') : null;
}
