import * as z from 'zod/mini';
import { date, ofHarmonised, text } from './_words.ts';

/** What these files of `hazard-data/` may hold, by path; `<basis>` and `*` stand for any name. */
export const tables = {
  'exposure/*.source.json': z.strictObject({
    lists: z.optional(
      z.strictObject({
        iarc: z.strictObject({ title: text, version: text, scope: text }),
        ntp: z.strictObject({ title: text, version: date, scope: text }),
        osha: z.strictObject({ title: text, version: text, scope: text }),
      }),
    ),
    licence: text,
    retrieved: date,
    checkedOn: date,
    gaps: text,
    source: text,
    instrument: z.optional(text),
    standardsRead: z.optional(z.strictObject({ note: text, sections: z.array(text) })),
  }),
  'regulatory/*.source.json': z.strictObject({
    instrument: text,
    title: text,
    version: text,
    source: text,
    licence: text,
    retrieved: date,
    checkedOn: date,
    gaps: text,
    readSince: z.optional(z.strictObject({ note: text, cas: z.array(text), categories: z.array(text) })),
  }),
  'sources/*.source.json': z.strictObject({
    instrument: text,
    source: text,
    licence: text,
    inForce: date,
    checkedOn: date,
    columns: text,
    gaps: text,
  }),
  'sources/substances/*.source.json': z.strictObject(ofHarmonised),
  'us-dot/*.source.json': z.strictObject({
    instrument: text,
    source: text,
    licence: text,
    checkedOn: date,
    gaps: text,
  }),
};
