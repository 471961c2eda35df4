import { misreads, reads } from '../quantity/reading.ts';
import { leaf } from './_leaf.ts';

/** A day, year-month-day. */
export const dateLeaf = (description: string) =>
  leaf(
    text => {
      const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text.trim());
      const day = match && new Date(`${text.trim()}T00:00:00Z`);
      if (!match || !day || Number.isNaN(day.valueOf()) || day.getUTCDate() !== Number(match[3]))
        return misreads(`\`${text}\` is not a date`, 'write year-month-day, such as 2026-11-25');
      return reads(text.trim());
    },
    'a date',
    '2026-11-25',
    description,
  );
