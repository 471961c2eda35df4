import * as z from 'zod/mini';
import { date, text, words } from './_words.ts';

/** What these files of `hazard-data/` may hold, by path; `<basis>` and `*` stand for any name. */
export const readingsOfAppendixC = {
  'sources/us-hcs/precautions/decisions.json': z.strictObject({
    about: text,
    decidedOn: date,
    classNames: z.record(text, text),
    statementNames: z.record(text, text),
    optionNames: z.record(text, words),
    conditions: z.record(text, text),
    phrases: z.record(text, z.array(text)),
    decisions: z.array(
      z.strictObject({
        hazards: z.optional(z.array(text)),
        field: text,
        take: text,
        why: text,
        code: z.optional(text),
      }),
    ),
    fields: z.array(
      z.strictObject({
        hazards: z.array(text),
        code: text,
        fields: z.strictObject({ bandages: z.optional(z.array(text)), media: z.optional(z.array(text)) }),
        why: text,
      }),
    ),
    instrument: text,
    cite: text,
    aliases: z.record(text, text),
  }),
  'sources/us-hcs/precautions/*-reading.json': z.strictObject({
    instrument: text,
    retrieved: date,
    vocabulary: z.optional(z.record(text, text)),
    rows: z.array(
      z.strictObject({
        hazard: text,
        statement: z.nullable(z.union([text, z.array(text)])),
        signal: z.nullable(z.enum(['Danger', 'Warning'])),
        symbol: z.nullable(z.union([text, z.array(text)])),
        prevention: z.array(text),
        response: z.array(text),
        storage: z.array(text),
        disposal: z.array(text),
        conditions: z.record(text, text),
        complete: z.record(text, z.array(text)),
        sources: z.array(
          z.strictObject({
            source: text,
            agrees: z.boolean(),
            where: z.optional(text),
            note: z.optional(text),
          }),
        ),
        confidence: z.enum(['mapped', 'from-memory', 'text-read']),
        notes: words,
        aliases: z.optional(z.array(text)),
      }),
    ),
    basis: z.optional(z.record(text, text)),
  }),
};
