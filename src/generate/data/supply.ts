import * as z from 'zod/mini';
import { date, text } from './_words.ts';

const upTo = z.nullable(z.number());

const dated = <Row extends z.core.$ZodType>(row: Row) =>
  z.record(date, z.strictObject({ table: z.array(row), cite: text, source: text, checked: date }));

const packaging = z.enum(['child-resistant', 'tactile']);

/** What these files of `hazard-data/` may hold, by path. */
export const supply = {
  'eu-clp/label-sizes.json': z.strictObject({
    title: text,
    instrument: text,
    checkedOn: date,
    note: text,
    figures: z.strictObject({
      dimensions: dated(
        z.strictObject({
          upTo,
          label: z.strictObject({ sides: z.tuple([z.number(), z.number()]), asked: z.boolean() }),
          pictogram: z.strictObject({ wanted: z.number(), least: z.number() }),
          cite: text,
        }),
      ),
      letters: dated(z.strictObject({ upTo, xHeight: z.number(), cite: text })),
      lines: z.record(
        date,
        z.strictObject({
          value: z.strictObject({ spacing: z.number() }),
          cite: text,
          source: text,
          checked: date,
        }),
      ),
    }),
  }),
  'eu-clp/small-packages.json': z.strictObject({
    title: text,
    instrument: text,
    checkedOn: date,
    note: text,
    inner: z.strictObject({ cite: text, source: text }),
    most: z.strictObject({ value: z.number(), unit: text, cite: text, source: text }),
    rules: z.array(
      z.strictObject({
        id: text,
        leaves: z.array(z.enum(['signs', 'hazard', 'precautionary'])),
        categories: z.array(z.strictObject({ code: text, publicToo: z.boolean() })),
        why: text,
        cite: text,
        source: text,
      }),
    ),
  }),
  'eu-clp/packaging.json': z.strictObject({
    title: text,
    instrument: text,
    checkedOn: date,
    source: text,
    note: text,
    rules: z.array(
      z.strictObject({
        what: packaging,
        cite: text,
        classes: z.array(z.strictObject({ class: text, categories: z.optional(z.array(text)) })),
        spared: z.optional(z.array(text)),
      }),
    ),
    substances: z.strictObject({ what: packaging, cite: text, from: z.record(text, z.number()) }),
  }),
};
