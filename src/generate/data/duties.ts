import * as z from 'zod/mini';
import { date, text } from './_words.ts';

/** What these files of `hazard-data/` may hold, by path; `<basis>` and `*` stand for any name. */
export const duties = {
  'claims/*.json': z.strictObject({
    instrument: text,
    kind: text,
    checkedOn: date,
    sources: z.array(text),
    note: text,
    lists: z.strictObject({
      US: z.optional(text),
      MADE: z.optional(text),
      ORG: z.optional(text),
      ACT: z.optional(text),
      CLEAN: z.optional(text),
    }),
    qualified: z.optional(text),
    rules: z.array(
      z.strictObject({
        id: text,
        verdict: text,
        cite: text,
        pattern: text,
        against: z.optional(z.array(text)),
      }),
    ),
    exempt: z.optional(z.array(text)),
    negated: z.optional(text),
    softened: z.optional(text),
  }),
  'us-hcs/small-containers.json': z.strictObject({
    instrument: text,
    checked: date,
    most: z.strictObject({ value: z.number(), unit: z.literal('mL'), cite: text }),
  }),
  'us-epa/voc-categories.json': z.strictObject({
    about: text,
    cite: text,
    inForce: date,
    checkedOn: date,
    source: text,
    categories: z.array(
      z.strictObject({
        id: text,
        title: text,
        percent: z.number(),
        form: z.optional(z.enum(['aerosol', 'other'])),
      }),
    ),
  }),
  'us-epa/voc.json': z.strictObject({
    about: text,
    instrument: text,
    inForce: date,
    checkedOn: date,
    rules: z.strictObject({ cite: text, source: text }),
    fragrance: z.strictObject({ percent: z.number(), cite: text }),
    lowVapor: z.strictObject({ cite: text, pressure: text }),
    dilution: z.strictObject({ cite: text }),
    exempt: z.strictObject({ cite: text, source: text }),
    substances: z.strictObject({
      source: text,
      voc: z.array(text),
      low: z.array(text),
      exempt: z.array(text),
      none: z.array(text),
    }),
  }),
  'us-cpsc/child-resistant.json': z.strictObject({
    about: text,
    instrument: text,
    source: text,
    checkedOn: date,
    notExamined: z.strictObject({ paragraphs: z.array(text), why: text }),
    viscosity: z.strictObject({ written: text, squareMillimetresPerSecond: z.number(), source: text }),
    rules: z.array(
      z.strictObject({
        id: text,
        cite: text,
        group: text,
        forms: z.array(z.enum(['liquid', 'solid', 'aerosol', 'gas'])),
        lowViscosity: z.optional(z.literal(true)),
        limits: z.array(
          z.strictObject({
            basis: z.enum(['weight', 'milligrams', 'volume']),
            comparison: text,
            value: z.number(),
          }),
        ),
        conditions: z.array(text),
      }),
    ),
    groups: z.strictObject({
      source: text,
      petroleumStreams: z.strictObject({ prefixes: z.array(text), groups: z.array(text), source: text }),
      members: z.record(text, z.record(text, z.number())),
    }),
  }),
};
