import * as z from 'zod/mini';
import { date, text } from './_words.ts';

/** What these files of `hazard-data/` may hold, by path; `<basis>` and `*` stand for any name. */
export const statements = {
  '<basis>/statements.json': z.strictObject({
    instrument: text,
    retrieved: date,
    sources: z.record(
      text,
      z.strictObject({ title: text, read: z.boolean(), where: z.optional(text), note: z.optional(text) }),
    ),
    filling: z.record(text, text),
    repealed: z.optional(z.array(text)),
    hazard: z.record(
      text,
      z.strictObject({
        text: text,
        source: text,
        printed: z.optional(text),
        fields: z.optional(
          z.strictObject({
            route: z.record(
              text,
              z.union([
                z.array(z.strictObject({ key: z.enum(['oral', 'dermal', 'inhalation']), text: text })),
                text,
                z.literal(true),
              ]),
            ),
            effect: z.optional(
              z.record(
                text,
                z.union([
                  z.array(
                    z.union([
                      z.strictObject({ key: z.enum(['both', 'fertility', 'development']), text: text }),
                      text,
                    ]),
                  ),
                  text,
                  z.literal(true),
                ]),
              ),
            ),
            organs: z.optional(
              z.record(
                text,
                z.union([
                  z.array(
                    z.union([
                      z.strictObject({ key: z.enum(['organs']), text: z.enum(['organs']) }),
                      z.enum(['organs']),
                    ]),
                  ),
                  text,
                  z.literal(true),
                ]),
              ),
            ),
          }),
        ),
        note: z.optional(text),
      }),
    ),
    supplemental: z.optional(
      z.record(
        text,
        z.strictObject({
          text: text,
          source: text,
          printed: z.optional(text),
          fields: z.optional(
            z.strictObject({ sensitizer: z.record(text, z.union([z.array(text), text, z.literal(true)])) }),
          ),
        }),
      ),
    ),
    precautionary: z.record(
      text,
      z.strictObject({
        text: text,
        group: text,
        source: text,
        printed: z.optional(text),
        fields: z.optional(
          z.record(
            text,
            z.record(
              text,
              z.union([
                z.array(z.union([z.strictObject({ key: text, text: text }), text])),
                text,
                z.boolean(),
              ]),
            ),
          ),
        ),
        parts: z.optional(z.array(text)),
        note: z.optional(text),
      }),
    ),
  }),
};
