import * as z from 'zod/mini';
import { date, text, words } from './_words.ts';

/** What these files of `hazard-data/` may hold, by path; `<basis>` and `*` stand for any name. */
export const transport = {
  'us-dot/criteria.json': z.strictObject({
    about: text,
    checkedOn: date,
    flammableLiquid: z.strictObject({ cite: text, flashPointAtMost: z.number(), source: text }),
    flammablePackingGroups: z.strictObject({
      cite: text,
      boilingPointAtMostForI: z.number(),
      flashPointBelowForII: z.number(),
      source: text,
    }),
    sustainedCombustion: z.strictObject({ cite: text, flashPointAbove: z.number(), source: text }),
    waterMiscible: z.strictObject({
      cite: text,
      flashPointAbove: z.number(),
      waterAbovePercent: z.number(),
      source: text,
    }),
    combustibleLiquid: z.strictObject({
      cite: text,
      flashPointAbove: z.number(),
      flashPointBelow: z.number(),
      reclass: z.strictObject({ cite: text, flashPointAtLeast: z.number(), source: text }),
      nonBulk: z.strictObject({ cite: text, source: text }),
      source: text,
    }),
    nonBulk: z.strictObject({
      cite: text,
      litresAtMost: z.number(),
      kilogramsAtMost: z.number(),
      source: text,
    }),
    corrosive: z.strictObject({
      cite: text,
      packingGroups: z.record(text, z.strictObject({ group: text, cite: text })),
      metals: z.strictObject({
        group: text,
        cite: text,
        millimetresAYearAbove: z.number(),
        testTemperature: z.number(),
      }),
      tests: z.strictObject({ cite: text, methods: z.array(text) }),
      aluminumAlone: z.strictObject({ cite: text, source: text }),
      source: text,
    }),
    toxic: z.strictObject({
      cite: text,
      definition: text,
      routes: z.strictObject({
        oral: z.strictObject({ I: z.number(), II: z.number(), III: z.number(), unit: text }),
        dermal: z.strictObject({ I: z.number(), II: z.number(), III: z.number(), unit: text }),
        mist: z.strictObject({ I: z.number(), II: z.number(), III: z.number(), unit: text }),
      }),
      fourHoursToOne: z.strictObject({ mist: z.number(), source: text }),
      vapour: z.strictObject({ cite: text, source: text }),
      source: text,
    }),
    oxidizer: z.strictObject({ cite: text, packingGroups: z.record(text, text), source: text }),
    otherClasses: z.record(
      text,
      z.union([z.strictObject({ class: text, cite: text, packingGroups: z.record(text, text) }), text]),
    ),
    byApproval: z.record(text, z.union([z.strictObject({ class: text, cite: text }), text])),
    gases: z.strictObject({ classes: z.array(text), cite: text, source: text }),
    marinePollutant: z.strictObject({
      cite: text,
      percentAtLeast: z.number(),
      severePercentAtLeast: z.number(),
      nonBulk: z.strictObject({ cite: text, source: text }),
      source: text,
    }),
    hazardousSubstance: z.strictObject({
      cite: text,
      concentrations: z.array(z.strictObject({ pounds: z.number(), percent: z.number() })),
      source: text,
    }),
    exceptedQuantities: z.strictObject({
      cite: text,
      inner: z.strictObject({ cite: text, amount: z.number(), toxicAmount: z.number(), unit: text }),
      outer: z.strictObject({ cite: text, I: z.number(), II: z.number(), III: z.number(), unit: text }),
      classes: z.strictObject({ cite: text, I: z.array(text), II: z.array(text), III: z.array(text) }),
      source: text,
    }),
    aqueousAlcohol: z.strictObject({
      cite: text,
      alcoholAtMostPercentByVolume: z.number(),
      waterAtLeastPercent: z.number(),
      alcoholDensityAtLeast: z.number(),
      densitySource: text,
      source: text,
    }),
  }),
  'us-dot/generic-entries.json': z.strictObject({
    about: text,
    cite: text,
    source: text,
    checkedOn: date,
    added: z.strictObject({ cite: text, source: text }),
    entries: z.array(
      z.strictObject({
        class: text,
        subsidiary: z.array(text),
        form: z.enum(['liquid', 'solid']),
        nature: z.optional(text),
        un: text,
      }),
    ),
    domestic: z.array(
      z.strictObject({ class: text, subsidiary: z.array(text), form: text, un: text, name: text }),
    ),
  }),
  'us-dot/limited-quantities.json': z.strictObject({
    about: text,
    source: text,
    checkedOn: date,
    gross: z.strictObject({ kilograms: z.number(), written: text }),
    mark: z.strictObject({ cite: text, sideMillimetres: z.number(), reducedMillimetres: z.number() }),
    aerosols: z.strictObject({ section: text, cite: text, inner: text, source: text }),
    classes: z.record(
      text,
      z.strictObject({
        section: text,
        cite: text,
        groups: z.strictObject({
          I: z.optional(z.strictObject({ cite: text, liquid: text })),
          II: z.strictObject({ cite: text, liquid: z.optional(text), solid: z.optional(text) }),
          III: z.strictObject({ cite: text, liquid: z.optional(text), solid: z.optional(text) }),
        }),
      }),
    ),
  }),
  'us-dot/precedence.json': z.strictObject({
    about: text,
    cite: text,
    source: text,
    checkedOn: date,
    order: z.strictObject({ cite: text, classes: z.array(text) }),
    above: z.strictObject({ cite: text, hazards: z.array(text), note: text }),
    columns: z.array(text),
    rows: z.record(text, z.record(text, text)),
  }),
  'us-dot/ranges-not-read.json': z.strictObject({
    source: text,
    checkedOn: date,
    about: text,
    rows: z.array(z.strictObject({ row: z.number(), id: words, packingGroup: words, description: text })),
  }),
  'us-dot/substances.json': z.strictObject({
    about: text,
    source: text,
    checkedOn: date,
    substances: z.array(
      z.strictObject({
        name: text,
        cas: z.array(text),
        entries: z.array(
          z.strictObject({
            un: text,
            form: z.optional(z.enum(['liquid', 'solid'])),
            counts: z.optional(text),
            name: z.optional(text),
          }),
        ),
        marine: z.optional(text),
        nature: z.optional(z.enum(['base', 'acid'])),
        organic: z.boolean(),
        group: z.optional(text),
        atLeastFactor: z.optional(z.number()),
        note: z.optional(text),
        marineIf: z.optional(text),
      }),
    ),
  }),
};
