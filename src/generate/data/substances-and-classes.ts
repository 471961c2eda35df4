import * as z from 'zod/mini';
import { date, ofHarmonised, text, words } from './_words.ts';

/** CAS number, molar mass, eight figures each with the letter of its source, solubility, fate, burning, names. */
const PROPERTIES_ROW =
  /^\d{2,7}-\d\d-\d(\t[\d.]*)?(\t(-?[\d.]+[cinpsw])?){0,8}(\t[msli]?)?(\t[rno]?)?(\t[yn]?)?(\t[^\t]+)?$/u;

/** What these files of `hazard-data/` may hold, by path; `<basis>` and `*` stand for any name. */
export const substancesAndClasses = {
  'categories-by-basis.json': z.strictObject({
    title: text,
    checkedOn: date,
    note: text,
    'us-hcs': z.array(z.strictObject({ codes: z.array(text), cite: text })),
    'eu-clp': z.array(z.strictObject({ codes: z.array(text), cite: text })),
    'un-ghs': z.array(z.strictObject({ codes: z.array(text), cite: text })),
    open: z.strictObject({ codes: z.array(text), cite: text }),
  }),
  'groups/*.json': z.strictObject({
    about: text,
    instrument: text,
    checkedOn: date,
    groups: z.array(
      z.strictObject({
        id: text,
        title: text,
        definition: text,
        source: text,
        members: z.strictObject({
          cas: z.array(text),
          names: z.array(text),
          not: z.optional(z.array(text)),
          possible: z.optional(z.strictObject({ cas: z.array(text), names: z.array(text) })),
        }),
        rows: z.array(
          z.strictObject({
            list: text,
            name: text,
            condition: z.optional(text),
            table: z.optional(text),
            setAside: z.optional(text),
          }),
        ),
        otherwise: z.optional(z.strictObject({ list: text, forms: z.array(text) })),
        individually: z.optional(z.array(text)),
      }),
    ),
  }),
  'hazard-classes.json': z.strictObject({
    about: text,
    instruments: z.array(text),
    checkedOn: date,
    check: text,
    classes: z.array(
      z.strictObject({
        class: text,
        listed: z.optional(text),
        title: text,
        kind: z.enum(['physical', 'health', 'environmental']),
        ghs: z.nullable(text),
        clp: z.nullable(text),
        us: z.nullable(text),
        categories: z.array(
          z.strictObject({
            category: words,
            statements: z.array(text),
            lettered: z.optional(z.array(text)),
            note: z.optional(text),
            printed: z.optional(z.array(text)),
            byRoute: z.optional(z.strictObject({ oral: text, dermal: text, inhalation: text })),
            byEffect: z.optional(z.record(text, text)),
          }),
        ),
        brackets: z.optional(text),
        note: z.optional(text),
      }),
    ),
  }),
  'hazard-wordings.json': z.strictObject({
    about: text,
    instruments: z.array(text),
    source: text,
    checkedOn: date,
    wordings: z.array(
      z.strictObject({
        class: z.optional(text),
        words: z.array(text),
        byCategory: z.optional(z.record(text, text)),
      }),
    ),
    groups: z.record(text, text),
    effects: z.record(text, text),
    statements: z.record(z.string(), z.string().check(z.regex(/^H\d{3}$/))),
    fillers: z.array(text),
  }),
  'measured-doubts.json': z.strictObject({
    title: text,
    checkedOn: date,
    flashPoint: z.strictObject({
      source: text,
      from: z.array(z.strictObject({ categories: z.array(text), percent: z.number() })),
      note: text,
      missing: z.strictObject({ source: text, classes: z.array(text) }),
    }),
    pH: z.strictObject({
      source: text,
      percent: z.number(),
      moderate: z.array(z.number()),
      acids: z.array(text),
      bases: z.array(text),
      note: text,
    }),
    openCup: z.strictObject({ source: text, more: z.number() }),
    near: z.strictObject({ source: text, share: z.number(), pH: z.number(), celsius: z.number() }),
    bearing: z.strictObject({
      source: text,
      note: text,
      share: z.number(),
      properties: z.record(
        text,
        z.strictObject({
          from: z.number(),
          classes: z.optional(z.array(text)),
          groups: z.optional(z.array(text)),
          sides: z.optional(z.literal(true)),
        }),
      ),
    }),
  }),
  'shelf.json': z.strictObject({
    about: text,
    source: text,
    checkedOn: date,
    sheetAgeYears: z.number(),
    fillTolerance: z.number(),
    soldAsSolution: z.array(z.strictObject({ cas: text, name: text, as: text })),
    hydrates: z.array(
      z.strictObject({
        cas: text,
        name: text,
        of: z.strictObject({ cas: text, name: text }),
        percent: z.number(),
      }),
    ),
  }),
  'strong-acids-and-bases.json': z.strictObject({
    title: text,
    cite: text,
    checkedOn: date,
    criterion: text,
    asked: z.strictObject({ percent: z.number(), cite: text }),
    forms: z.array(text),
    members: z.array(z.strictObject({ side: z.enum(['acid', 'base']), cas: text, name: text })),
    words: z.strictObject({ source: text, hazardClass: text, acid: z.array(text), base: z.array(text) }),
  }),
  'substances/entry-notes.json': z.strictObject({
    title: text,
    instrument: text,
    source: text,
    checkedOn: date,
    notes: z.array(
      z.strictObject({
        id: text,
        kind: text,
        cite: text,
        hazardClasses: z.optional(z.array(text)),
        shown: z.optional(text),
      }),
    ),
    metal: z.strictObject({
      source: text,
      genericLimitsIn: z.array(text),
      percent: z.record(text, z.number()),
    }),
  }),
  'substances/entry-scopes.json': z.strictObject({
    title: text,
    instrument: text,
    source: text,
    checkedOn: date,
    states: z.strictObject({
      note: text,
      gas: z.array(text),
      solution: z.array(text),
      massive: z.array(text),
      solid: z.array(text),
      liquid: z.array(text),
    }),
    concentrations: z.array(z.strictObject({ index: text, operator: text, percent: z.number(), cite: text })),
    solutions: z.array(z.strictObject({ cas: text, index: text, name: text, cite: text })),
  }),
  'substances/harmonised.meta.json': z.strictObject({
    ...ofHarmonised,
    counts: z.strictObject({
      sourceRows: z.number(),
      indexNumbers: z.number(),
      casNumbers: z.number(),
      withoutCas: z.number(),
      lines: z.number(),
    }),
  }),
  'substances/unparsed.json': z.tuple([]),
  'units.json': z.strictObject({
    title: text,
    source: text,
    licence: text,
    checkedOn: date,
    kinds: z.strictObject({
      mass: z.strictObject({
        base: text,
        units: z.array(z.strictObject({ unit: text, factor: text, also: z.array(text) })),
      }),
      volume: z.strictObject({
        base: text,
        units: z.array(z.strictObject({ unit: text, factor: text, also: z.array(text) })),
      }),
      length: z.strictObject({
        base: text,
        units: z.array(z.strictObject({ unit: text, factor: text, also: z.array(text) })),
      }),
      density: z.strictObject({
        base: text,
        units: z.array(
          z.strictObject({ unit: text, factor: text, also: z.array(text), per: z.optional(text) }),
        ),
      }),
      temperature: z.strictObject({
        base: text,
        units: z.array(
          z.strictObject({
            unit: text,
            factor: text,
            also: z.array(text),
            per: z.optional(text),
            offset: z.optional(text),
          }),
        ),
      }),
      pressure: z.strictObject({
        base: text,
        units: z.array(
          z.strictObject({ unit: text, factor: text, also: z.array(text), per: z.optional(text) }),
        ),
      }),
      viscosity: z.strictObject({
        base: text,
        units: z.array(z.strictObject({ unit: text, factor: text, also: z.array(text) })),
      }),
      molarMass: z.strictObject({
        base: text,
        units: z.array(z.strictObject({ unit: text, factor: text, also: z.array(text) })),
      }),
    }),
  }),
  'water.json': z.strictObject({
    title: text,
    cas: text,
    names: z.array(text),
    density: text,
    densityUnit: text,
    source: text,
    checkedOn: date,
  }),
  'substances/properties.json': z.strictObject({
    title: text,
    checkedOn: date,
    columns: z.array(text),
    note: text,
    sources: z.record(text, z.strictObject({ short: text, title: text })),
    rows: z.array(z.string().check(z.regex(PROPERTIES_ROW))),
  }),
};
