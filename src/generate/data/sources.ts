import * as z from 'zod/mini';
import { date, text } from './_words.ts';

/** What these files of `hazard-data/` may hold, by path; `<basis>` and `*` stand for any name. */
export const sources = {
  'sources/eu-clp/allocation-differences.json': z.strictObject({
    about: text,
    instrument: text,
    cite: text,
    checkedOn: date,
    leftOut: z.record(text, text),
    renamed: z.record(text, text),
    changed: z.record(text, z.strictObject({ note: text })),
    aliases: z.record(text, text),
    rows: z.array(
      z.strictObject({
        hazard: text,
        statements: z.array(text),
        signalWord: z.nullable(text),
        pictograms: z.array(text),
        precautions: z.strictObject({
          prevention: z.array(
            z.strictObject({ code: text, fields: z.optional(z.strictObject({ equipment: z.array(text) })) }),
          ),
          response: z.array(z.strictObject({ code: text })),
          storage: z.array(z.strictObject({ code: text })),
          disposal: z.array(z.strictObject({ code: text })),
        }),
        sources: z.array(z.strictObject({ source: text, agrees: z.literal(true), where: text })),
        confidence: z.enum(['text-read']),
        notes: z.optional(z.array(text)),
      }),
    ),
  }),
  'sources/un-ghs/allocation-corrections.json': z.strictObject({
    about: text,
    instrument: text,
    cite: text,
    checkedOn: date,
    source: z.strictObject({ file: text, title: text }),
    aliases: z.record(text, text),
    corrections: z.array(
      z.strictObject({
        hazard: text,
        codes: z.optional(z.record(text, text)),
        why: text,
        statements: z.optional(z.array(text)),
        drop: z.optional(z.array(text)),
      }),
    ),
    copied: z.record(text, z.strictObject({ from: text, signalWord: text })),
    keys: z.record(text, z.array(text)),
    statements: z.strictObject({
      new: z.record(
        text,
        z.strictObject({
          text: text,
          group: z.enum(['prevention', 'response', 'disposal']),
          fields: z.optional(
            z.strictObject({ division: z.record(text, z.union([z.array(text), text, z.literal(true)])) }),
          ),
          printed: z.optional(text),
          fieldsOf: z.optional(text),
          parts: z.optional(z.array(text)),
        }),
      ),
      dropped: z.array(text),
      whyNew: text,
      hazard: z.record(text, z.strictObject({ text: text, source: text })),
    }),
    conditions: z.record(text, text),
    when: z.record(text, z.array(text)),
  }),
};
