import * as z from 'zod/mini';
import { date, text } from './_words.ts';

/** What these files of `hazard-data/` may hold, by path; `<basis>` and `*` stand for any name. */
export const reactivity = {
  'reactivity/groups.json': z.strictObject({
    title: text,
    checkedOn: date,
    note: text,
    groups: z.array(
      z.strictObject({
        id: text,
        name: text,
        members: z.array(z.strictObject({ cas: text, name: text })),
        words: z.optional(z.array(text)),
        alone: z.optional(z.strictObject({ with: text, gives: text, from: z.number(), source: text })),
        note: z.optional(text),
        hazardClasses: z.optional(z.array(text)),
        water: z.optional(z.boolean()),
      }),
    ),
  }),
  'reactivity/pairs.json': z.strictObject({
    title: text,
    checkedOn: date,
    from: z.strictObject({ percent: z.number(), cite: text }),
    mixture: text,
    additivity: text,
    use: text,
    note: text,
    order: z.array(text),
    pairs: z.array(
      z.strictObject({
        id: text,
        a: z.array(text),
        b: z.array(text),
        danger: text,
        gives: text,
        text: text,
        quietFromPh: z.optional(z.number()),
        source: z.array(text),
        forms: z.optional(z.array(z.enum(['liquid', 'aerosol']))),
        fromA: z.optional(z.number()),
        fromB: z.optional(z.number()),
        below: z.optional(
          z.strictObject({
            a: z.number(),
            forms: z.array(text),
            danger: text,
            gives: text,
            text: text,
            source: text,
          }),
        ),
        neutralizes: z.optional(z.boolean()),
        excludeCas: z.optional(z.array(text)),
      }),
    ),
  }),
};
