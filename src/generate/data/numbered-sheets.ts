import * as z from 'zod/mini';
import { date, text, words } from './_words.ts';

/** From which percent an ingredient of a class is disclosed. */
const rows = z.array(z.strictObject({ class: text, categories: z.array(words), from: z.number() }));

/** The sections of a sheet with their parts and items. */
const sections = z.strictObject({
  basis: text,
  instrument: text,
  cite: text,
  checkedOn: date,
  source: text,
  note: text,
  sections: z.array(
    z.strictObject({
      number: z.number(),
      heading: text,
      parts: z.array(
        z.strictObject({
          number: words,
          heading: words,
          items: z.array(
            z.strictObject({
              key: text,
              heading: words,
              asks: z.optional(text),
              with: z.optional(text),
              optional: z.optional(z.literal(true)),
              letter: z.optional(text),
            }),
          ),
        }),
      ),
    }),
  ),
});

/** What these files of `hazard-data/` may hold, by path. */
export const numberedSheets = {
  'eu-clp/sheet/alternative-names.json': z.strictObject({
    instrument: text,
    checkedOn: date,
    source: text,
    note: text,
    hazards: z.array(text),
  }),
  'eu-clp/sheet/cut-offs.json': z.strictObject({
    basis: text,
    instrument: text,
    checkedOn: date,
    versions: z.array(
      z.strictObject({
        inForce: date,
        note: text,
        classified: z.strictObject({
          cite: text,
          source: text,
          rows: rows,
          sensitizerShareOfSpecificLimit: z.number(),
        }),
        unclassified: z.strictObject({
          cite: text,
          source: text,
          rows: rows,
          otherwise: z.strictObject({ from: z.number(), fromGas: z.number() }),
        }),
        identified: z.strictObject({ cite: text, from: z.number(), source: text, classes: rows }),
        unionLimit: z.strictObject({
          cite: text,
          unclassified: z.strictObject({ from: z.number(), fromGas: z.number() }),
          source: text,
        }),
      }),
    ),
  }),
  'eu-clp/sheet/forbidden.json': z.strictObject({
    instrument: text,
    checkedOn: date,
    source: text,
    note: text,
    phrases: z.array(text),
    others: z.array(text),
  }),
  'eu-clp/sheet/label-substances.json': z.strictObject({
    instrument: text,
    checkedOn: date,
    source: text,
    note: text,
    names: z.number(),
    classes: z.array(z.strictObject({ class: text, categories: z.optional(z.array(text)) })),
  }),
  'eu-clp/sheet/properties.json': z.strictObject({
    instrument: text,
    checkedOn: date,
    source: text,
    note: text,
    appliesTo: z.record(text, z.array(text)),
  }),
  'eu-clp/sheet/sections.json': sections,
  'un-ghs/sheet/cut-offs.json': z.strictObject({
    basis: text,
    instrument: text,
    checkedOn: date,
    versions: z.array(
      z.strictObject({ inForce: date, classified: z.strictObject({ cite: text, source: text, rows: rows }) }),
    ),
  }),
  'sheet/forms.json': z.strictObject({
    title: text,
    checkedOn: date,
    note: text,
    sheets: z.record(
      z.enum(['us-hcs', 'eu-clp', 'un-ghs']),
      z.strictObject({
        title: text,
        file: text,
        paper: z.enum(['letter', 'a4']),
        market: z.nullable(z.enum(['us', 'eu'])),
        outline: z.enum(['appendix-d', 'numbered']),
        secrets: z.enum(['paragraph-i', 'alternative-name', 'confidential']),
        reach: z.boolean(),
        customaryUnits: z.boolean(),
        sectionHead: z.nullable(text),
        language: z.nullable(text),
        unknownAcuteToxicity: text,
      }),
    ),
  }),
  'un-ghs/sheet/sections.json': sections,
};
