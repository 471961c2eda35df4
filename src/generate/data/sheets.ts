import * as z from 'zod/mini';
import { date, text, words } from './_words.ts';

/** What these files of `hazard-data/` may hold, by path; `<basis>` and `*` stand for any name. */
export const sheets = {
  'sheet/advice.json': z.strictObject({
    title: text,
    checkedOn: date,
    note: text,
    from: z.strictObject({ percent: z.number(), ground: text }),
    rules: z.array(
      z.strictObject({
        id: text,
        place: text,
        when: z.array(
          z.strictObject({
            classes: z.optional(z.array(text)),
            form: z.optional(z.array(text)),
            cas: z.optional(z.array(text)),
            supplemental: z.optional(text),
            hazard: z.optional(text),
            water: z.optional(text),
            fate: z.optional(text),
            group: z.optional(text),
            noneOf: z.optional(z.array(text)),
            undecided: z.optional(z.array(text)),
            notClassified: z.optional(z.array(text)),
            phUpTo: z.optional(z.number()),
            phFrom: z.optional(z.number()),
          }),
        ),
        ground: text,
        unlabelled: z.optional(z.literal(true)),
        otherwise: z.optional(z.literal(true)),
        denies: z.optional(z.array(text)),
      }),
    ),
  }),
  'sheet/effects.json': z.strictObject({
    title: text,
    checkedOn: date,
    note: text,
    effects: z.record(text, z.strictObject({ kind: z.enum(['acute', 'delayed']), cite: text })),
  }),
  'sheet/property-forms.json': z.strictObject({
    title: text,
    checkedOn: date,
    note: text,
    notFor: z.record(text, z.array(z.enum(['liquid', 'solid', 'gas', 'aerosol']))),
    solventFrom: z.strictObject({ percent: z.number(), ground: text }),
    volatileUpTo: z.strictObject({ celsius: z.number(), ground: text }),
    lowVaporFrom: z.strictObject({ celsius: z.number(), ground: text }),
    liquidUpTo: z.strictObject({ celsius: z.number(), ground: text }),
    bioaccumulationFrom: z.strictObject({ logKow: z.number(), ground: text }),
    mobileUpTo: z.strictObject({ logKow: z.number(), ground: text }),
  }),
  'us-hcs/carcinogen-categories.json': z.strictObject({
    title: text,
    instrument: text,
    source: text,
    checkedOn: date,
    cite: text,
    told: text,
    iarc: z.record(text, text),
    ntp: z.record(text, text),
    unlisted: text,
  }),
  'us-hcs/sheet/prescribed-ranges.json': z.strictObject({
    instrument: text,
    checkedOn: date,
    note: text,
    combinableFrom: z.number(),
    combinableTo: z.number(),
    ranges: z.array(z.strictObject({ paragraph: text, low: z.number(), high: z.number() })),
  }),
  'us-hcs/sheet/sections.json': z.strictObject({
    instrument: text,
    checkedOn: date,
    note: text,
    sections: z.array(
      z.strictObject({
        number: z.number(),
        heading: text,
        appendixD: text,
        mandatory: z.boolean(),
        form: z.enum(['pairs', 'blocks']),
        subheadings: z.array(
          z.strictObject({
            key: text,
            letter: words,
            heading: text,
            printed: words,
            asks: z.nullable(text),
            question: z.optional(z.enum(['limits', 'supplier', 'measurement', 'ecology', 'transport'])),
          }),
        ),
      }),
    ),
  }),
  'us-hcs/sheet/statement-places.json': z.strictObject({
    instrument: text,
    checkedOn: date,
    note: text,
    everyRoute: z.array(text),
    everyRouteNote: text,
    places: z.record(text, z.array(text)),
  }),
};
