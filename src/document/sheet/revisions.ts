import type { Revision } from '../../record/record-blocks.ts';
import { fill } from './fill.ts';
import type { SheetInput } from './input.ts';

/** Revision of the sheet, null where neither the input nor the record has one. */
export const revisionOf = ({ revision, record }: SheetInput): string | null => revision ?? record.revision;

/** Day of the sheet: that of the last change of the record, which moves with the content alone; else of the draft. */
export const dayOf = ({ record, date }: SheetInput): string => record.revised ?? date.slice(0, 10);

/** The revision that this one takes the place of; null where the record names none. */
export function superseded(input: SheetInput): Revision | null {
  const present = revisionOf(input);
  return input.record.revisions.filter(({ revision }) => revision !== present).at(-1) ?? null;
}

/** What changed in the present revision, as the record says. */
export const changesOf = (input: SheetInput): string | null =>
  input.record.revisions.find(({ revision }) => revision === revisionOf(input))?.changes ?? null;

/** The present revision and the one that it takes the place of, a sentence each. */
export function revisionTexts(input: SheetInput): readonly string[] {
  const { other: words } = input.words.sheet;
  const [revision, former] = [revisionOf(input), superseded(input)];
  return [
    ...(revision ? [fill(words.revision, { revision })] : []),
    ...(former ? [fill(words.supersedes, { revision: former.revision, date: former.date })] : []),
  ];
}

/** All revisions with what changed, the newest first; empty where the record tells no changes. */
export function revisionHistory(input: SheetInput): readonly string[] {
  const { other: words } = input.words.sheet;
  return input.record.revisions
    .flatMap(({ revision, date, changes }) =>
      changes === null ? [] : [fill(words.history, { revision, date, changes })],
    )
    .reverse();
}
