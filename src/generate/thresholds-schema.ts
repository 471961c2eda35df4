import * as z from 'zod/mini';
import { findClass, findCode, hazardClasses } from '../notation/classes.ts';
import { listedClass } from '../notation/listed-class.ts';
import type { ThresholdFile } from '../reference/threshold-file.ts';
import { checkSources } from './_threshold-sources.ts';

const text = z.string().check(z.minLength(1));
const date = z.iso.date();
const positive = z.number().check(z.positive());
const percent = z.number().check(z.nonnegative(), z.lte(100));
const form = z.enum(['liquid', 'solid', 'gas', 'aerosol']);
const listed = new Set(hazardClasses.map(({ class: name }) => listedClass(name)));
const hazardClass = text.check(z.refine(name => findClass(name) !== undefined, 'no hazard class'));
const classAsListed = text.check(z.refine(name => listed.has(name), 'no hazard class as listed'));
const code = text.check(z.refine(name => findCode(name) !== undefined, 'no class with category'));

/** A block with figures or a rule of the law: it names its paragraph. */
const cited = <Shape extends z.core.$ZodShape>(shape: Shape) =>
  z.strictObject({ ...shape, cite: text, source: z.optional(text) });

const share = cited({ percent });
const place = cited({});
const factor = cited({ factor: positive });
const extremePh = cited({ acid: positive, base: positive });

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
  categories: cited(byRoute(byCategory)),
  conversion: cited({ ...byRoute(byCategory), categoryFive: z.optional(text) }),
  countsUpTo: cited(byRoute(positive)),
  relevantFrom: cited({ 1: percent, 2: percent, 3: percent, 4: percent, 5: z.optional(percent) }),
  formula: place,
  sameCategory: place,
  respiratoryTract: z.optional(place),
  unknown: z.strictObject({ relevantFrom: share, correctedAbove: share, source: text }),
});

const skin = z.strictObject({
  relevantFrom: share,
  corrosive: share,
  irritant: share,
  corrosiveWeight: factor,
  subCategories: place,
  notAdditive: cited({ corrosive: percent, irritant: percent }),
  extremePh,
  mild: z.optional(z.nullable(share)),
});

const eye = z.strictObject({
  relevantFrom: share,
  damage: share,
  irritant: share,
  damageWeight: factor,
  notAdditive: cited({ damage: percent, irritant: percent }),
  extremePh,
  fromSkin: place,
  irritantCategory: z.enum(['2', '2A']),
  mildIrritant: z.nullable(cited({ category: text })),
});

// The class without categories has empty ones.
const category = z.string();
const cutOffs = cited({
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
  category1DisputedBelow: z.optional(share),
  twoCutOffs: z.optional(z.boolean()),
  substancesFrom: z.optional(date),
  substancesOnMarketFrom: z.optional(date),
  mixturesFrom: z.optional(date),
  mixturesOnMarketFrom: z.optional(date),
  datesSource: z.optional(text),
});

const aquatic = z.strictObject({
  relevantFrom: cited({ category1: percent, other: percent }),
  sum: percent,
  acute: cited({ categories: z.array(text) }),
  chronic: cited({ categories: z.array(text) }),
  mFactor: place,
  unknown: place,
});

const principle = cited({
  classes: z.array(classAsListed),
  category: z.optional(text),
  form: z.optional(form),
});

const mixtureEvidence = cited({
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
    dilutedDownTo: z.record(classAsListed, share),
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

const aerosols = cited({
  flammable: z.array(hazardClass),
  above: share,
  untested: cited({ category: text }),
  heatOfCombustion: positive,
  otherwise: text,
  notBeside: cited({ classes: z.array(hazardClass) }),
});

const organicPeroxides = cited({
  exempt: z.array(cited({ availableOxygen: percent, hydrogenPeroxide: percent })),
  formula: cited({ oxygen: positive }),
  types: place,
  hydrogenPeroxide: z.strictObject({ cas: text, name: text }),
});

const version = z
  .strictObject({
    text,
    inForce: date,
    checkedOn: date,
    instrument: text,
    physicalInstrument: text,
    note: text,
    acuteToxicity,
    skin,
    eye,
    byIngredient: z.record(hazardClass, cutOffs),
    transientOrganEffects: z.strictObject({ relevantFrom: share, sum: share }),
    aspiration: z.strictObject({
      relevantFrom: share,
      forms: place,
      categories: z.array(cited({ category: text, sum: percent, viscosity: positive })),
      source: z.optional(text),
    }),
    flammableLiquids: cited({
      flashPoint: z.strictObject({
        extreme: z.number(),
        flammable: z.number(),
        combustible: z.nullable(z.number()),
      }),
      boilingPoint: z.strictObject({ extreme: z.number() }),
      combustibleCategory: z.nullable(text),
    }),
    physicalClasses: z.record(hazardClass, physicalClass),
    aerosols,
    organicPeroxides,
    physicalScreening: z.strictObject({ relevantFrom: share, note: text }),
    aquatic: z.nullable(aquatic),
    environmental: z.record(hazardClass, cutOffs),
    specificLimits: cited({ apply: z.boolean() }),
    carcinogenLists: z.nullable(place),
    mixtureEvidence,
    buildingBlocks: z.optional(z.record(code, z.boolean())),
    buildingBlocksSource: z.optional(text),
  })
  .check(checkSources);

const notHeld = z.strictObject({
  text,
  from: date,
  mayBeUsed: z.optional(z.array(z.strictObject({ for: text, until: date }))),
  cite: z.optional(text),
  source: text,
});

/** What `hazard-data/<basis>/thresholds.json` may hold; a key that is not here is an error. */
export const thresholdsSchema = z.strictObject({
  id: z.enum(['us-hcs', 'eu-clp', 'un-ghs']),
  title: text,
  notHeld: z.array(notHeld),
  versions: z.array(version).check(z.minLength(1)),
});

/**
 * The figures of a basis from its data file.
 * @param content of the file, parsed
 * @throws Error with the place of each fault
 */
export function readThresholds(content: unknown): ThresholdFile {
  const { success, data, error } = z.safeParse(thresholdsSchema, content);
  if (success) return data;
  throw new Error(
    error.issues.map(({ path, message }) => `thresholds ${path.join('.')}: ${message}`).join('\n'),
  );
}
