import type { MultiplicationFactors, SpecificLimit } from '../notation/limit.ts';
import { Exact } from '../quantity/exact.ts';
import type { Endpoint, GivenData } from '../record/given-data.ts';
import { formatAct } from '../reference/harmonised/act.ts';
import type { HarmonisedEntry } from '../reference/harmonised/entry.ts';
import { decidingNotes, metalPercent } from '../reference/harmonised/entry-notes.ts';
import type { IngredientData } from './ingredient.ts';

/** No endpoint. */
export const nothing: ReadonlySet<Endpoint> = new Set();

/** Data of a constituent of which no more is known than what is given. */
export const dataWith = (
  known: Partial<IngredientData> & Pick<IngredientData, 'source'>,
): IngredientData => ({
  hazards: [],
  limits: [],
  ate: {},
  mFactors: factors({}),
  peroxide: null,
  unknown: nothing,
  noData: false,
  metal: null,
  supplemental: [],
  supplementalLimits: [],
  minimum: false,
  ...known,
});

const given = {
  none: new Set<'acute' | 'chronic'>(),
  acute: new Set(['acute'] as const),
  chronic: new Set(['chronic'] as const),
  both: new Set(['acute', 'chronic'] as const),
};

/** M-factors with 1 for those that are not given, and which were. */
export const factors = ({ acute, chronic }: MultiplicationFactors): IngredientData['mFactors'] => ({
  acute: acute ?? 1,
  chronic: chronic ?? 1,
  given:
    acute === undefined
      ? chronic === undefined
        ? given.none
        : given.chronic
      : chronic === undefined
        ? given.acute
        : given.both,
});

const untouched = new WeakMap<HarmonisedEntry, IngredientData>();
const nothingAdded: Added = { unknown: [] };

type Added = Pick<GivenData, 'limits' | 'ate' | 'mFactors' | 'peroxide' | 'unknown' | 'harmonised'>;

/** The data of a harmonised entry with what the record adds to it. */
export function entryData(entry: HarmonisedEntry, added: Added): IngredientData {
  const { limits, ate, mFactors, peroxide, unknown, harmonised } = added;
  const notes = harmonised?.notes ?? [];
  const answered = notes.length > 0 || harmonised?.metal;
  if (limits || ate || mFactors || peroxide || unknown.length > 0 || answered) return dataOf(entry, added);
  // The same for every record that adds nothing.
  let data = untouched.get(entry);
  if (!data) {
    data = dataOf(entry, nothingAdded);
    untouched.set(entry, data);
  }
  return data;
}

/**
 * The part of a substance that its limits count where the entry has Note 1 (CLP Annex VI 1.1.3.2): the metal, as the record
 * gives it or the formula of the substance does; null where the whole counts, or nobody knows.
 */
export function metalOf(
  { notes, cas }: Pick<HarmonisedEntry, 'notes' | 'cas'>,
  answer: GivenData['harmonised'],
): Exact | null {
  if (decidingNotes(notes).every(({ kind }) => kind !== 'by-metal')) return null;
  const percent = answer?.metal ?? metalPercent(cas);
  if (percent === null) return null;
  const exact = typeof percent === 'number' ? Exact.decimal(String(percent)) : percent;
  return Exact.fraction(exact.exact.div(100));
}

/** A limit in percent of the metal as one in percent of the substance. */
const ofSubstance = (limit: SpecificLimit, metal: Exact): SpecificLimit => ({
  ...limit,
  low: limit.low && Exact.fraction(limit.low.exact.div(metal.exact)),
  high: limit.high && Exact.fraction(limit.high.exact.div(metal.exact)),
});

function dataOf(
  entry: HarmonisedEntry,
  { limits, ate, mFactors, peroxide, unknown, harmonised }: Added,
): IngredientData {
  const added = Boolean(limits || ate || mFactors || peroxide);
  const shown = harmonised?.notes.filter(note => entry.notes.includes(note)) ?? [];
  const dropped = new Set(decidingNotes(shown).flatMap(({ hazardClasses }) => hazardClasses));
  const stays = ({ hazardClass }: { readonly hazardClass: string }) => !dropped.has(hazardClass);
  const metal = metalOf(entry, harmonised);
  const own = (dropped.size > 0 ? entry.limits.filter(stays) : entry.limits).map(limit =>
    metal ? ofSubstance(limit, metal) : limit,
  );
  return dataWith({
    hazards: dropped.size > 0 ? entry.hazards.filter(stays) : entry.hazards,
    limits: limits ? [...own, ...limits] : own,
    ate: ate ? { ...entry.ate, ...ate } : entry.ate,
    mFactors: factors({ ...entry.mFactors, ...mFactors }),
    peroxide: peroxide ?? null,
    unknown: unknown.length > 0 ? new Set(unknown) : nothing,
    supplemental: entry.supplemental,
    supplementalLimits: entry.supplementalLimits,
    source: { kind: 'harmonised', index: entry.index, act: formatAct(entry.act), added },
    minimum: entry.minimum,
    metal: metal?.value ?? null,
  });
}
