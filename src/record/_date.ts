import { isDay } from '../quantity/day.ts';
import { misreads, reads } from '../quantity/reading.ts';
import { leaf } from './_leaf.ts';

/** A day, year-month-day. */
export const dateLeaf = (description: string) =>
  leaf(
    text => {
      if (!isDay(text.trim()))
        return misreads(`\`${text}\` is not a date`, 'write year-month-day, such as 2026-11-25');
      return reads(text.trim());
    },
    'a date',
    '2026-11-25',
    description,
  );
