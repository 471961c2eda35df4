import * as z from 'zod/mini';

/** Text that says something. */
export const text = z.string().check(z.minLength(1));
/** Text that may be empty. */
export const words = z.string();
/** YYYY-MM-DD */
export const date = z.iso.date();
/** A paragraph of each basis. */
export const byBasis = z.strictObject({ 'us-hcs': text, 'eu-clp': text, 'un-ghs': text });

/** What is said of a table of harmonised entries, and of the file that it is made from. */
export const ofHarmonised = {
  instrument: text,
  asAmendedBy: text,
  source: text,
  licence: text,
  standing: text,
  retrieved: date,
  checkedOn: date,
  gaps: text,
};
