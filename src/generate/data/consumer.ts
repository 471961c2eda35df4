import * as z from 'zod/mini';
import { date, text } from './_words.ts';

/** What these files of `hazard-data/` may hold, by path. */
export const consumer = {
  'us-cpsc/consumer-hazards.json': z.strictObject({
    title: text,
    checkedOn: date,
    source: text,
    note: text,
    dose: z.strictObject({
      source: text,
      routes: z.array(
        z.strictObject({
          route: text,
          estimate: text,
          unit: text,
          highlyToxic: z.number(),
          toxic: z.number(),
          factor: z.number(),
          fatal: text,
          harmful: text,
          settledBy: z.array(text),
          cites: z.strictObject({ highlyToxic: text, toxic: text }),
        }),
      ),
      classified: z.strictObject({ note: text, highlyToxic: z.array(text), doubt: z.array(text) }),
    }),
    flash: z.strictObject({
      source: text,
      extremelyFlammable: z.strictObject({ atMost: z.number(), cite: text }),
      flammable: z.strictObject({ below: z.number(), cite: text }),
      combustible: z.strictObject({ atMost: z.number(), cite: text }),
      withoutFlashPoint: z.record(text, text),
      exceptions: text,
    }),
    signal: z.record(text, z.union([text, z.array(text)])),
    classes: z.array(
      z.strictObject({
        class: text,
        kind: text,
        statement: text,
        cite: text,
        settledBy: z.array(text),
        categories: z.optional(z.array(text)),
        effect: z.optional(text),
      }),
    ),
    uncovered: z.array(z.strictObject({ classes: z.array(text), why: text, cite: text })),
    statements: z.array(z.strictObject({ id: text, text: z.optional(text), source: text })),
    merge: z.array(z.strictObject({ of: z.array(text), to: text })),
    within: z.record(text, z.array(text)),
    also: z.record(text, z.strictObject({ text: text, source: text })),
    children: z.strictObject({ text: text, cite: text }),
    elsewhere: z.strictObject({ text: text, cite: text }),
    names: z.strictObject({ cite: text, free: z.strictObject({ kinds: z.array(text), cite: text }) }),
    replaced: z.strictObject({ note: text, codes: z.array(text) }),
  }),
  'us-cpsc/label-type.json': z.strictObject({
    title: text,
    checkedOn: date,
    note: text,
    cautionary: z.strictObject({
      cite: text,
      inForce: date,
      source: text,
      rows: z.array(
        z.strictObject({ upTo: z.nullable(z.number()), signal: text, hazard: text, other: text }),
      ),
    }),
    contents: z.strictObject({
      cite: text,
      inForce: date,
      source: text,
      rows: z.array(z.strictObject({ upTo: z.nullable(z.number()), declaration: text })),
      lowestPart: z.strictObject({ part: z.number(), freeUpTo: z.number(), cite: text, source: text }),
    }),
    panel: z.strictObject({ part: z.number(), cite: text, source: text }),
    letters: z.strictObject({ heightToWidth: z.number(), cite: text }),
  }),
  'us-cpsc/special-labeling.json': z.strictObject({
    title: text,
    checkedOn: date,
    source: text,
    note: text,
    rules: z.array(
      z.strictObject({
        id: text,
        cite: text,
        limit: z.number(),
        signal: z.nullable(text),
        statements: z.array(text),
        members: z.record(text, z.number()),
        poison: z.optional(z.literal(true)),
        also: z.optional(z.array(text)),
        thin: z.optional(text),
        petroleum: z.optional(z.literal(true)),
        condition: z.optional(text),
      }),
    ),
    notExamined: text,
  }),
};
