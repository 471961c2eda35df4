import type { Constituent } from '../formula/constituent.ts';
import type { Hazard } from '../notation/hazard.ts';
import type { MultiplicationFactors } from '../notation/limit.ts';
import type { Endpoint, GivenData } from '../record/given-data.ts';
import { formatAct } from '../reference/harmonised/act.ts';
import type { HarmonisedEntry } from '../reference/harmonised/entry.ts';
import { bySource } from './facts/provision.ts';
import type { Warning } from './facts/warning.ts';
import type { IngredientData } from './ingredient.ts';

/** Looks up harmonised classifications as they apply on a date; percent helps to choose among entries of one number. */
export type HarmonisedLookup = (cas: string, percent: number) => HarmonisedEntry | null;

const everyEndpoint: readonly Endpoint[] = ['acute-oral', 'acute-dermal', 'acute-inhalation', 'aquatic'];
const nothing: ReadonlySet<Endpoint> = new Set();

/** A constituent's data with what the reviewer must know of them. */
export interface Resolved {
  readonly data: IngredientData;
  readonly entry: HarmonisedEntry | null;
  readonly warnings: readonly Warning[];
}

/**
 * What is known of a constituent: the record's own hazards replace the harmonised entry; without them its limits,
 * estimates and factors are added to the entry; with neither, every endpoint is unknown.
 */
export function resolve(constituent: Constituent, index: number, lookup: HarmonisedLookup): Resolved {
  const { given, cas, water } = constituent;
  const entry = cas && !water ? lookup(cas, constituent.high.value) : null;
  if (given.hazards) return fromRecord(constituent, index, given.hazards, entry);
  if (water)
    return {
      data: blank({
        source: { kind: 'water' },
        unknown: given.unknown.length > 0 ? new Set(given.unknown) : nothing,
      }),
      entry: null,
      warnings: [],
    };
  if (entry) return fromEntry(constituent, index, entry);

  const known = new Set<Endpoint>();
  if (given.ate?.oral) known.add('acute-oral');
  if (given.ate?.dermal) known.add('acute-dermal');
  if (given.ate?.gas || given.ate?.vapour || given.ate?.mist) known.add('acute-inhalation');
  const unknown = new Set([...everyEndpoint.filter(endpoint => !known.has(endpoint)), ...given.unknown]);
  return {
    data: blank({
      noData: true,
      unknown,
      ate: given.ate ?? {},
      limits: given.limits ?? [],
      mFactors: factors(given.mFactors ?? {}),
      peroxide: given.peroxide ?? null,
      source: { kind: 'none', named: given.source ?? null },
    }),
    entry: null,
    warnings: [{ id: 'no-data', constituent: index, cas, cites: [] }],
  };
}

function fromRecord(
  { given }: Constituent,
  constituent: number,
  hazards: readonly Hazard[],
  entry: HarmonisedEntry | null,
): Resolved {
  const warnings: Warning[] = [];
  if (entry) {
    const milder = milderThan(hazards, entry.hazards);
    const { index, act, supplemental } = entry;
    if (milder.length > 0)
      warnings.push({
        id: 'milder-than-harmonised',
        constituent,
        index,
        act: formatAct(act),
        hazards: milder,
        cites: [],
      });
    if (supplemental.length > 0)
      warnings.push({
        id: 'supplemental-replaced',
        constituent,
        index,
        codes: supplemental,
        cites: [bySource('CLP Annex VI')],
      });
  }
  if (hazards.length === 0 && !given.source) warnings.push({ id: 'no-source', constituent, cites: [] });
  return {
    data: blank({
      hazards,
      limits: given.limits ?? [],
      ate: given.ate ?? {},
      mFactors: factors(given.mFactors ?? {}),
      peroxide: given.peroxide ?? null,
      unknown: given.unknown.length > 0 ? new Set(given.unknown) : nothing,
      source: { kind: 'record', named: given.source ?? null },
      minimum: hazards.some(({ minimum }) => minimum),
    }),
    entry,
    warnings,
  };
}

const untouched = new WeakMap<HarmonisedEntry, IngredientData>();

/** The data of an entry to which the record adds nothing; the same for every record. */
function entryData(entry: HarmonisedEntry): IngredientData {
  let data = untouched.get(entry);
  if (!data) {
    data = dataOf(entry, { unknown: [] });
    untouched.set(entry, data);
  }
  return data;
}

type Added = Pick<GivenData, 'limits' | 'ate' | 'mFactors' | 'peroxide' | 'unknown'>;

function dataOf(entry: HarmonisedEntry, { limits, ate, mFactors, peroxide, unknown }: Added): IngredientData {
  const added = Boolean(limits || ate || mFactors || peroxide);
  return blank({
    hazards: entry.hazards,
    limits: limits ? [...entry.limits, ...limits] : entry.limits,
    ate: ate ? { ...entry.ate, ...ate } : entry.ate,
    mFactors: factors({ ...entry.mFactors, ...mFactors }),
    peroxide: peroxide ?? null,
    unknown: unknown.length > 0 ? new Set(unknown) : nothing,
    supplemental: entry.supplemental,
    supplementalLimits: entry.supplementalLimits,
    source: { kind: 'harmonised', index: entry.index, act: formatAct(entry.act), added },
    minimum: entry.minimum,
  });
}

function fromEntry({ given }: Constituent, constituent: number, entry: HarmonisedEntry): Resolved {
  const adds = given.limits || given.ate || given.mFactors || given.peroxide || given.unknown.length > 0;
  const { index } = entry;
  const codes = entry.hazards.filter(({ minimum }) => minimum).map(({ code }) => code);
  const cites = [bySource('CLP Annex VI 1.2.1')];
  const warnings: Warning[] = entry.minimum
    ? [{ id: 'minimum-classification', constituent, index, codes, cites }]
    : [];
  return {
    data: adds ? dataOf(entry, given) : entryData(entry),
    entry,
    warnings,
  };
}

const blank = (known: Partial<IngredientData> & Pick<IngredientData, 'source'>): IngredientData => ({
  hazards: [],
  limits: [],
  ate: {},
  mFactors: factors({}),
  peroxide: null,
  unknown: nothing,
  noData: false,
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

const factors = ({ acute, chronic }: MultiplicationFactors): IngredientData['mFactors'] => ({
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

/** Hazards of the entry that the record lacks or has in a milder category. */
function milderThan(own: readonly Hazard[], harmonised: readonly Hazard[]): Hazard[] {
  return harmonised.filter(theirs => {
    const same = own.filter(
      ours =>
        family(ours) === family(theirs) &&
        (ours.route === theirs.route || ours.route === null || theirs.route === null),
    );
    return !same.some(ours => severity(ours) >= severity(theirs));
  });
}

const families: Readonly<Record<string, string>> = {
  'Skin Corr.': 'skin',
  'Skin Irrit.': 'skin',
  'Eye Dam.': 'eye',
  'Eye Irrit.': 'eye',
};

const family = ({ hazardClass, effect }: Hazard): string =>
  (families[hazardClass] ?? hazardClass) + (effect ?? '');

// 1A is worse than 1B is worse than 1 is worse than 2; a corrosive is worse than any irritant.
function severity({ hazardClass, category }: Hazard): number {
  const number = Number.parseInt(category, 10) || 1;
  const letter = /[A-C]$/.exec(category)?.[0];
  const step = letter ? 0.3 - 0.1 * 'ABC'.indexOf(letter) : 0;
  const lead = hazardClass === 'Skin Corr.' || hazardClass === 'Eye Dam.' ? 10 : 0;
  return lead - number + step;
}
