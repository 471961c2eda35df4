import { dateLeaf } from './_date.ts';
import { line, list, mapping } from './_leaf.ts';
import * as z from './_zod.ts';

/** Reviews by qualified persons, as `sign` writes them. */
export const reviewSchema = list(
  mapping(
    {
      by: line('A. Reviewer', 'Name of the reviewer', 200),
      qualification: z.optional(line('industrial hygienist', 'Qualification of the reviewer')),
      date: dateLeaf('Day of the review, year-month-day'),
      of: list(
        line('classification', 'What was reviewed', 200),
        '[classification, sheet]',
        'What was reviewed',
      ).check(z.minLength(1)),
      fingerprint: line('sha256:…', 'Fingerprint of the inputs that were reviewed'),
      note: z.optional(line('…', 'Note of the reviewer', 2000)),
    },
    'A review by a qualified person',
  ),
  '[]',
  'Who reviewed what; written by `labelwright sign`',
);
