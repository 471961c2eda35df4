import * as z from 'zod/mini';
import { date, text } from './_words.ts';

/** What these files of `hazard-data/` may hold, by path; `<basis>` and `*` stand for any name. */
export const allocation = {
  '<basis>/allocation.json': z.strictObject({
    instrument: text,
    cite: text,
    checkedOn: date,
    conditions: z.record(text, text),
    aliases: z.record(text, text),
    rows: z.array(
      z.strictObject({
        hazard: text,
        statements: z.array(text),
        signalWord: z.nullable(z.enum(['Danger', 'Warning'])),
        pictograms: z.array(text),
        precautions: z.strictObject({
          prevention: z.array(
            z.strictObject({
              code: text,
              fields: z.optional(
                z.strictObject({
                  equipment: z.optional(z.array(z.enum(['gloves', 'clothing', 'eye', 'face']))),
                  air: z.optional(z.array(z.enum(['dusts-or-mists']))),
                }),
              ),
              when: z.optional(z.array(text)),
            }),
          ),
          response: z.array(
            z.strictObject({
              code: text,
              when: z.optional(z.array(text)),
              fields: z.optional(
                z.strictObject({ media: z.optional(z.array(text)), bandages: z.optional(z.array(text)) }),
              ),
            }),
          ),
          storage: z.array(z.strictObject({ code: text, when: z.optional(z.array(text)) })),
          disposal: z.array(z.strictObject({ code: text })),
        }),
        sources: z.array(
          z.strictObject({
            source: text,
            agrees: z.boolean(),
            where: z.optional(text),
            note: z.optional(text),
            reading: z.optional(z.number()),
          }),
        ),
        confidence: z.enum(['text-read', 'mapped', 'from-memory']),
        notes: z.optional(z.array(text)),
        disagreements: z.optional(
          z.array(
            z.strictObject({
              field: text,
              first: z.nullable(
                z.union([
                  z.strictObject({
                    air: z.optional(z.array(text)),
                    electrical: z.optional(z.array(z.enum(['electrical', 'ventilating', 'lighting']))),
                  }),
                  z.array(text),
                ]),
              ),
              second: z.nullable(
                z.union([
                  z.strictObject({ air: z.optional(z.array(text)), media: z.optional(z.array(text)) }),
                  z.array(text),
                ]),
              ),
              taken: z.enum(['second', 'first']),
              why: text,
            }),
          ),
        ),
      }),
    ),
  }),
};
