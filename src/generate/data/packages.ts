import * as z from 'zod/mini';
import { date, text } from './_words.ts';

/** What files of `hazard-data/us-dot/` on packages may hold: labels, marks, rules of aircraft. */
export const packages = {
  'us-dot/hazard-labels.json': z.strictObject({
    title: text,
    instrument: text,
    source: text,
    checkedOn: date,
    names: z.strictObject({
      cite: text,
      rows: z.array(
        z.strictObject({
          class: text,
          when: z.optional(z.literal('inhalation')),
          name: text,
          design: text,
        }),
      ),
      'left-out': text,
    }),
    colors: z.record(text, z.strictObject({ color: text, cite: text, source: text })),
    inhalation: z.strictObject({ specialProvisions: z.array(text), cite: text, source: text }),
    subsidiary: z.strictObject({
      cite: text,
      classes: z.array(text),
      flammable: z.strictObject({ cite: text, group: text, celsiusAtLeast: z.number(), note: text }),
      toxicByCorrosion: z.strictObject({ cite: text }),
      flammableSolidBeside: z.strictObject({ class: text, beside: text, cite: text }),
    }),
    number: z.strictObject({ cite: text, least: z.number(), most: z.number(), size: text }),
    size: z.strictObject({
      cite: text,
      mandatoryFrom: date,
      side: z.number(),
      innerBorder: z.number(),
      innerBorderWidth: z.number(),
      measured: text,
      reduced: text,
    }),
    place: z.strictObject({
      surface: text,
      together: z.strictObject({ cite: text, millimetres: z.number() }),
      small: text,
      contrast: text,
      twice: z.strictObject({ cite: text, cubicMetres: z.number() }),
    }),
    exceptions: z.strictObject({ limitedQuantity: text, bulk: text, noLabel: text }),
    durability: z.strictObject({ cite: text, days: z.number() }),
  }),
  'us-dot/package-marks.json': z.strictObject({
    title: text,
    instrument: text,
    source: text,
    checkedOn: date,
    limitedQuantity: z.strictObject({
      cite: text,
      side: z.number(),
      reducedSide: z.number(),
      border: z.number(),
      reducedBorder: z.number(),
      measured: text,
      blackDepth: z.strictObject({ value: z.number(), source: text }),
      grossLimit: z.strictObject({ kilograms: z.number(), cite: text }),
    }),
    identification: z.strictObject({
      cite: text,
      characters: z.number(),
      small: z.strictObject({ kilograms: z.number(), characters: z.number() }),
      reportable: text,
      source: text,
    }),
    orientation: z.strictObject({
      cite: text,
      sides: text,
      arrowHeight: z.strictObject({ value: z.number(), source: text }),
      exceptions: z.array(z.strictObject({ id: text, inner: text, words: text, cite: text })),
    }),
    marinePollutant: z.strictObject({
      cite: text,
      mode: text,
      small: z.strictObject({ cite: text, litres: z.number(), kilograms: z.number() }),
      limitedQuantity: text,
      names: text,
      size: z.strictObject({ cite: text, side: z.number(), border: z.number() }),
      source: text,
    }),
    consignor: z.strictObject({ cite: text, source: text }),
  }),
  'us-dot/aircraft.json': z.strictObject({
    about: text,
    source: text,
    checkedOn: date,
    international: z.strictObject({ cite: text, forbidden: text }),
    performance: z.strictObject({ cite: text, group: text, classes: z.array(text), level: text }),
    pressure: z.strictObject({
      cite: text,
      kilopascals: z.number(),
      lower: z.strictObject({ kilopascals: z.number(), group: text, classes: z.array(text) }),
    }),
    closures: text,
    limitedQuantity: z.strictObject({
      cite: text,
      mark: text,
      gross: z.strictObject({ kilograms: z.number(), cite: text }),
      classNine: z.array(text),
      rows: z.array(
        z.strictObject({
          class: text,
          group: z.enum(['II', 'III']),
          form: z.enum(['liquid', 'solid']),
          inner: text,
          glass: z.optional(text),
          outer: text,
          beside: z.optional(
            z.array(z.strictObject({ subsidiary: text, inner: z.optional(text), outer: text })),
          ),
        }),
      ),
    }),
  }),
};
