import type { Partly } from './_cross.ts';
import { dateLeaf } from './_date.ts';
import { line, list, mapping, prose } from './_leaf.ts';
import * as z from './_zod.ts';

/** The revisions of the data sheet, the first one first; the present one may be among them. */
export const revisionsSchema = list(
  mapping(
    {
      revision: line('1', 'Revision', 60),
      date: dateLeaf('Its date, year-month-day'),
      changes: z.optional(prose('Exposure limits in section 8.', 'What changed against the one before')),
    },
    'A revision of the data sheet',
  ),
  '[{revision: 1, date: 2026-03-02, changes: First sheet.}]',
  'Revisions of the data sheet, the first one first',
);

/** Complains where revisions contradict each other or the present one. */
export function wholeRevisions(
  { revision, revised, revisions }: Partly,
  complain: (path: (string | number)[], message: string, hint?: string) => void,
): void {
  if (!Array.isArray(revisions)) return;
  const text = (value: unknown): string => (typeof value === 'string' ? value : '');
  const known = revisions.map((each: Partly | null) => ({
    revision: text(each?.revision),
    date: text(each?.date),
  }));
  if (revision === undefined && known.length > 0)
    complain(
      ['revisions'],
      '`revisions` are given without the present one',
      'add `revision: …` and `revised: …`',
    );
  const seen = new Set<unknown>();
  known.forEach((each, index) => {
    const before = known[index - 1]?.date ?? '';
    if (each.revision !== '' && seen.has(each.revision))
      complain(
        ['revisions', index, 'revision'],
        `revision \`${each.revision}\` stands twice`,
        'keep one of them',
      );
    seen.add(each.revision);
    if (each.date !== '' && each.date < before)
      complain(
        ['revisions', index, 'date'],
        `the date lies before ${before} of the revision above`,
        'write the first one first',
      );
    const isPresent = each.revision === revision;
    if (typeof revised !== 'string' || each.date === '') return;
    if (isPresent ? each.date !== revised : each.date > revised)
      complain(
        ['revisions', index, 'date'],
        isPresent
          ? `\`revised\` gives the same revision another date, ${revised}`
          : `the date lies behind ${revised}, that of the present revision (\`revised\`)`,
        'compare the dates; `revised` moves with `revision`',
      );
  });
}
