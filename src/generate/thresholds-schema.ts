import * as z from 'zod/mini';
import { findClass, findCode, hazardClasses } from '../notation/classes.ts';
import { listedClass } from '../notation/listed-class.ts';
import type { ThresholdFile } from '../reference/threshold-file.ts';
import { checkDates } from './_threshold-dates.ts';

const text = z.string().check(z.minLength(1));
const date = z.iso.date();
const positive = z.number().check(z.positive());
const percent = z.number().check(z.nonnegative(), z.lte(100));
const form = z.enum(['liquid', 'solid', 'gas', 'aerosol']);
const listed = new Set(hazardClasses.map(({ class: name }) => listedClass(name)));
const hazardClass = text.check(z.refine(name => findClass(name) !== undefined, 'no hazard class'));
const classAsListed = text.check(z.refine(name => listed.has(name), 'no hazard class as listed'));
const code = text.check(z.refine(name => findCode(name) !== undefined, 'no class with category'));

/** What stands in every dated figure: its paragraph, where it was read and when that was. */
const told = { cite: text, source: text, checked: date };
const byDate = <Each extends z.core.$ZodType>(each: Each) =>
  z.record(date, each).check(z.refine(dates => Object.keys(dates).length > 0, 'no date'));

/** Named figures of one paragraph, by the date in force. */
const dated = <Shape extends z.core.$ZodShape>(shape: Shape) =>
  byDate(z.strictObject({ value: z.strictObject(shape), ...told }));
/** One figure or word. */
const single = <Each extends z.core.$ZodType>(each: Each) => byDate(z.strictObject({ value: each, ...told }));
/** Rows that name their own paragraphs. */
const table = <Each extends z.core.$ZodType>(each: Each) => byDate(z.strictObject({ table: each, ...told }));

/** A row or a part of a figure with a paragraph of its own. */
const cited = <Shape extends z.core.$ZodShape>(shape: Shape) =>
  z.strictObject({ ...shape, cite: text, source: z.optional(text) });

const percentCited = cited({ percent });
const share = dated({ percent });
const place = byDate(z.strictObject(told));
const factor = dated({ factor: positive });
const extremePh = dated({ acid: positive, base: positive });

const byCategory = z.strictObject({
  1: positive,
  2: positive,
  3: positive,
  4: positive,
  5: z.optional(positive),
});
const byRoute = <Each extends z.core.$ZodType>(each: Each) => ({
  oral: each,
  dermal: each,
  gas: each,
  vapour: each,
  mist: each,
});

const acuteToxicity = z.strictObject({
  categories: dated(byRoute(byCategory)),
  conversion: dated({ ...byRoute(byCategory), categoryFive: z.optional(text) }),
  countsUpTo: dated(byRoute(positive)),
  relevantFrom: dated({ 1: percent, 2: percent, 3: percent, 4: percent, 5: z.optional(percent) }),
  formula: place,
  sameCategory: place,
  respiratoryTract: z.optional(place),
  unknown: z.strictObject({ relevantFrom: share, correctedAbove: share }),
});

const skin = z.strictObject({
  relevantFrom: share,
  corrosive: share,
  irritant: share,
  corrosiveWeight: factor,
  subCategories: place,
  notAdditive: dated({ corrosive: percent, irritant: percent }),
  extremePh,
  mild: z.optional(z.nullable(share)),
});

const eye = z.strictObject({
  relevantFrom: share,
  damage: share,
  irritant: share,
  damageWeight: factor,
  notAdditive: dated({ damage: percent, irritant: percent }),
  extremePh,
  fromSkin: place,
  irritantCategory: single(z.enum(['2', '2A'])),
  mildIrritant: z.nullable(dated({ category: text })),
});

// The class without categories has empty ones.
const category = z.string();
const cutOffs = dated({
  rows: z
    .array(
      z.strictObject({
        ingredient: category,
        result: category,
        from: percent,
        fromGas: z.optional(percent),
      }),
    )
    .check(z.minLength(1)),
  labelOptionalBelow: z.optional(cited({ category: text, percent })),
  category1DisputedBelow: z.optional(percentCited),
  twoCutOffs: z.optional(z.boolean()),
  substancesFrom: z.optional(date),
  substancesOnMarketFrom: z.optional(date),
  mixturesFrom: z.optional(date),
  mixturesOnMarketFrom: z.optional(date),
  datesSource: z.optional(text),
});

const aquatic = z.strictObject({
  relevantFrom: dated({ category1: percent, other: percent }),
  sum: single(percent),
  acute: dated({ categories: z.array(text) }),
  chronic: dated({ categories: z.array(text) }),
  mFactor: place,
  unknown: place,
});

const principle = cited({
  classes: z.array(classAsListed),
  category: z.optional(text),
  form: z.optional(form),
});

const mixtureEvidence = dated({
  mayLower: z.boolean(),
  caseByCase: z.array(classAsListed),
  byClass: z.record(classAsListed, z.strictObject({ test: text, bridging: text })),
  byClassSource: text,
  bridging: cited({
    principles: z.strictObject({
      dilution: principle,
      batching: principle,
      concentration: principle,
      interpolation: principle,
      'substantially-similar': principle,
      aerosols: principle,
    }),
    dilutedDownTo: z.record(classAsListed, percentCited),
  }),
});

const physicalClass = z.strictObject({
  cite: text,
  criteria: text,
  instrument: z.optional(text),
  forms: z.array(form).check(z.minLength(1)),
  members: z.optional(z.array(hazardClass)),
  openedBy: z.optional(z.array(hazardClass)),
  renamed: z.optional(z.record(text, text)),
  mixtureAbove: z.optional(percent),
  notFromIngredients: z.optional(text),
});

const aerosols = dated({
  flammable: z.array(hazardClass),
  above: percentCited,
  untested: cited({ category: text }),
  heatOfCombustion: positive,
  otherwise: text,
  notBeside: cited({ classes: z.array(hazardClass) }),
});

const organicPeroxides = dated({
  exempt: z.array(cited({ availableOxygen: percent, hydrogenPeroxide: percent })),
  formula: cited({ oxygen: positive }),
  types: cited({}),
  hydrogenPeroxide: z.strictObject({ cas: text, name: text }),
});

const figures = z.strictObject({
  acuteToxicity,
  skin,
  eye,
  byIngredient: z.record(hazardClass, cutOffs),
  transientOrganEffects: z.strictObject({ relevantFrom: share, sum: share }),
  aspiration: z.strictObject({
    relevantFrom: share,
    forms: place,
    categories: table(z.array(cited({ category: text, sum: percent, viscosity: positive }))),
  }),
  flammableLiquids: dated({
    flashPoint: z.strictObject({
      extreme: z.number(),
      flammable: z.number(),
      combustible: z.nullable(z.number()),
    }),
    boilingPoint: z.strictObject({ extreme: z.number() }),
    combustibleCategory: z.nullable(text),
  }),
  physicalClasses: table(z.record(hazardClass, physicalClass)),
  aerosols,
  organicPeroxides,
  physicalScreening: z.strictObject({ relevantFrom: share }),
  aquatic: z.nullable(aquatic),
  environmental: z.record(hazardClass, cutOffs),
  specificLimits: dated({ apply: z.boolean() }),
  letteredStatements: single(z.boolean()),
  supplementalStatements: single(z.boolean()),
  carcinogenLists: z.nullable(place),
  mixtureEvidence,
  buildingBlocks: z.optional(table(z.record(code, z.boolean()))),
});

const textHeld = z.strictObject({
  text,
  instrument: text,
  physicalInstrument: text,
  note: text,
  checked: date,
});

const notHeld = z.strictObject({
  text,
  from: date,
  mayBeUsed: z.optional(z.array(z.strictObject({ for: text, until: date }))),
  cite: z.optional(text),
  source: text,
});

/** What `hazard-data/<basis>/thresholds.json` may hold; a key that is not here is an error. */
export const thresholdsSchema = z
  .strictObject({
    id: z.enum(['us-hcs', 'eu-clp', 'un-ghs']),
    title: text,
    about: text,
    notHeld: z.array(notHeld),
    texts: byDate(textHeld),
    figures,
  })
  .check(checkDates);

/**
 * The figures of a basis from its data file.
 * @param content of the file, parsed
 * @throws Error with the place of each fault
 */
export function readThresholds(content: unknown): ThresholdFile {
  const { success, data, error } = z.safeParse(thresholdsSchema, content);
  if (success) return data as ThresholdFile;
  throw new Error(
    error.issues.map(({ path, message }) => `thresholds ${path.join('.')}: ${message}`).join('\n'),
  );
}
