import * as z from 'zod/mini';
import { date, text, words } from './_words.ts';

const texts = z.record(text, z.strictObject({ text, read: z.enum(['twice', 'once', 'memory']) }));
const phrases = z.record(text, text);
const fields = z.record(
  text,
  z.strictObject({
    options: z.record(text, words),
    between: z.optional(text),
    last: z.optional(text),
    lastBefore: z.optional(phrases),
    named: z.optional(text),
  }),
);
const source = z.strictObject({
  title: text,
  read: z.boolean(),
  where: z.optional(text),
  note: z.optional(text),
});

/** What the files of a language may hold: texts of the law and of the tables. */
export const languages = {
  'languages/*/statements.json': z.strictObject({
    language: text,
    instrument: text,
    checkedOn: date,
    sources: z.strictObject({ twice: source, once: source, memory: source }),
    note: text,
    notIn: z.record(text, z.array(text)),
    signalWords: z.strictObject({ Danger: text, Warning: text, source: text }),
    hazard: texts,
    supplemental: texts,
    precautionary: texts,
    fields,
    fieldsOf: z.record(text, fields),
    medical: z.strictObject({ lead: text, between: text, last: text }),
    lines: z.strictObject({
      source: text,
      routes: phrases,
      unknownAcuteToxicity: z.strictObject({ one: text, several: text, between: text, all: text }),
      unknownAquatic: text,
      notToMix: z.strictObject({ text, terms: phrases }),
    }),
  }),
  'languages/*/terms.json': z.strictObject({
    language: text,
    checkedOn: date,
    source: text,
    note: text,
    read: z.array(text),
    headings: phrases,
    classes: phrases,
    pictograms: phrases,
    effects: phrases,
    names: phrases,
    bases: phrases,
  }),
};
