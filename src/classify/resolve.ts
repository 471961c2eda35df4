import type { Constituent } from '../formula/constituent.ts';
import type { Hazard } from '../notation/hazard.ts';
import type { AteValues } from '../notation/limit.ts';
import type { Endpoint, GivenData } from '../record/given-data.ts';
import type { PhysicalForm } from '../record/product-record.ts';
import { formatAct } from '../reference/harmonised/act.ts';
import { type FoundEntry, only } from '../reference/harmonised/choose-entry.ts';
import type { HarmonisedEntry } from '../reference/harmonised/entry.ts';
import type { SoughtEntry } from '../reference/harmonised/entry-scopes.ts';
import { withListings } from './carcinogen-lists.ts';
import { bySource } from './facts/provision.ts';
import type { Warning } from './facts/warning.ts';
import type { LostData } from './facts/warning-entry.ts';
import type { IngredientData } from './ingredient.ts';
import { dataWith, entryData, factors, nothing } from './ingredient-data.ts';
import { lostByValues, lostOf } from './warnings/entry-lost.ts';
import { answerUnused, entryTold, laterOf } from './warnings/entry-told.ts';

/** Looks up harmonised classifications as they apply on a date; percent and form help to choose among several. */
export type HarmonisedLookup = (sought: SoughtEntry) => FoundEntry;

const everyEndpoint: ReadonlySet<Endpoint> = new Set([
  'acute-oral',
  'acute-dermal',
  'acute-inhalation',
  'aquatic',
]);

/** Endpoints of which estimates say nothing, or that the record calls unknown all the same. */
function unknownBeside(
  { oral, dermal, gas, vapour, mist }: AteValues,
  more: readonly Endpoint[],
): ReadonlySet<Endpoint> {
  const unknown = new Set(everyEndpoint);
  if (oral) unknown.delete('acute-oral');
  if (dermal) unknown.delete('acute-dermal');
  if (gas || vapour || mist) unknown.delete('acute-inhalation');
  for (const endpoint of more) unknown.add(endpoint);
  return unknown;
}

/** What hazards or values of a record replace. */
export interface ReplacedEntry {
  readonly index: string;
  readonly act: string;
  readonly lost: LostData;
  /** Whether hazards of the record stand in its place, or values in the place of its own. */
  readonly by: 'hazards' | 'values';
  /** As the record words it; null where it names none. */
  readonly source: string | null;
  /** The data of the entry, as they would be used without the hazards of the record. */
  readonly data: IngredientData;
}

/** A constituent's data with what the reviewer must know of them. */
export interface Resolved {
  readonly data: IngredientData;
  readonly entry: HarmonisedEntry | null;
  readonly warnings: readonly Warning[];
  /** Null where the record takes nothing from an entry. */
  readonly replaced: ReplacedEntry | null;
}

/**
 * What is known of a constituent: the record's own hazards replace the harmonised entry; without them its limits,
 * estimates and factors are added to the entry; with neither, every endpoint is unknown.
 * @param form of the mixture.
 */
export function resolve(
  constituent: Constituent,
  index: number,
  lookup: HarmonisedLookup,
  form: PhysicalForm,
): Resolved {
  const { name, cas, water, high } = constituent;
  const found = water ? only(null) : chosen(constituent, lookup({ name, cas, percent: high.value, form }));
  const resolved = ofTables(constituent, index, found);
  const listed = withListings(resolved.data, index, found.carcinogens ?? null);
  return listed.warnings.length === 0
    ? resolved
    : { ...resolved, data: listed.data, warnings: [...resolved.warnings, ...listed.warnings] };
}

function ofTables(constituent: Constituent, index: number, found: FoundEntry): Resolved {
  const { given, water } = constituent;
  const { entry } = found;
  if (given.hazards) return fromRecord(constituent, index, given.hazards, found);
  if (water) {
    const unknown = given.unknown.length > 0 ? new Set(given.unknown) : nothing;
    return {
      data: dataWith({ source: { kind: 'water' }, unknown }),
      entry: null,
      warnings: [],
      replaced: null,
    };
  }
  if (entry) return fromEntry(constituent, index, entry, found);
  return withoutHazards(constituent, index, found);
}

/** The entry that the record names among those of its number, else the one that was found. */
function chosen({ given }: Constituent, found: FoundEntry): FoundEntry {
  const { entry, others } = found;
  const named = given.harmonised?.entry ?? null;
  const taken = named === null ? null : others.find(({ index }) => index === named);
  if (taken)
    return {
      ...found,
      entry: taken,
      others: [entry!, ...others.filter(other => other !== taken)],
      by: 'record',
    };
  return entry && named === entry.index && others.length > 0 ? { ...found, by: 'record' } : found;
}

function withoutHazards({ given, cas }: Constituent, index: number, { later }: FoundEntry): Resolved {
  const unknown = given.ate ? unknownBeside(given.ate, given.unknown) : everyEndpoint;
  return {
    data: dataWith({
      noData: true,
      unknown,
      ate: given.ate ?? {},
      limits: given.limits ?? [],
      mFactors: factors(given.mFactors ?? {}),
      peroxide: given.peroxide ?? null,
      source: { kind: 'none', named: given.source ?? null },
    }),
    entry: null,
    warnings: [
      { id: 'no-data', constituent: index, cas, ...(later && { later: laterOf(later) }), cites: [] },
      ...answerUnused(null, [], index, given),
    ],
    replaced: null,
  };
}

function fromRecord(
  { given }: Constituent,
  constituent: number,
  hazards: readonly Hazard[],
  found: FoundEntry,
): Resolved {
  const { entry } = found;
  const data = dataWith({
    hazards,
    limits: given.limits ?? [],
    ate: given.ate ?? {},
    mFactors: factors(given.mFactors ?? {}),
    peroxide: given.peroxide ?? null,
    unknown: given.unknown.length > 0 ? new Set(given.unknown) : nothing,
    source: { kind: 'record', named: given.source ?? null },
    minimum: hazards.some(({ minimum }) => minimum),
  });
  const warnings = entryTold(found, constituent, data, given);
  if (hazards.length === 0 && !given.source) warnings.push({ id: 'no-source', constituent, cites: [] });
  const lost = entry && lostOf(given, hazards, entry);
  return {
    data,
    entry,
    warnings,
    replaced: lost && {
      index: entry.index,
      act: formatAct(entry.act),
      lost,
      by: 'hazards',
      source: given.source ?? null,
      data: ofEntryAlone(entry, given),
    },
  };
}

function fromEntry(
  { given }: Constituent,
  constituent: number,
  entry: HarmonisedEntry,
  found: FoundEntry,
): Resolved {
  const { index } = entry;
  const codes = entry.hazards.filter(({ minimum }) => minimum).map(({ code }) => code);
  const cites = [bySource('CLP Annex VI 1.2.1')];
  const warnings: Warning[] = entry.minimum
    ? [{ id: 'minimum-classification', constituent, index, codes, cites }]
    : [];
  const data = entryData(entry, given);
  const lost = lostByValues(given, entry);
  return {
    data,
    entry,
    warnings: [...warnings, ...entryTold(found, constituent, data, given)],
    replaced: lost && {
      index,
      act: formatAct(entry.act),
      lost,
      by: 'values',
      source: given.source ?? null,
      data: ofEntryAlone(entry, given),
    },
  };
}

/** The data of an entry without the values of the record, which may be milder. */
const ofEntryAlone = (entry: HarmonisedEntry, { unknown, harmonised }: GivenData): IngredientData =>
  entryData(entry, { unknown, ...(harmonised && { harmonised }) });
