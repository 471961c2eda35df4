import type { Constituent } from '../formula/constituent.ts';
import type { Hazard } from '../notation/hazard.ts';
import type { MultiplicationFactors } from '../notation/limit.ts';
import type { Endpoint, GivenData } from '../record/given-data.ts';
import { formatAct } from '../reference/harmonised/act.ts';
import type { HarmonisedEntry } from '../reference/harmonised/entry.ts';
import type { Warning } from './classification.ts';
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
export function resolve(constituent: Constituent, lookup: HarmonisedLookup): Resolved {
  const { given, cas, name, water } = constituent;
  const entry = cas && !water ? lookup(cas, constituent.high.value) : null;
  if (given.hazards) return fromRecord(constituent, given.hazards, entry);
  if (water)
    return {
      data: blank({ source: 'water', unknown: given.unknown.length > 0 ? new Set(given.unknown) : nothing }),
      entry: null,
      warnings: [],
    };
  if (entry) return fromEntry(constituent, entry);

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
      source: given.source ?? 'no data',
    }),
    entry: null,
    warnings: [
      {
        id: 'no-data',
        text: `${name}${cas ? ` (CAS ${cas})` : ''}: no hazards in the record and no harmonised entry; every endpoint without a value is unknown`,
      },
    ],
  };
}

function fromRecord(
  { name, given }: Constituent,
  hazards: readonly Hazard[],
  entry: HarmonisedEntry | null,
): Resolved {
  const warnings: Warning[] = [];
  if (entry) {
    const milder = milderThan(hazards, entry.hazards);
    if (milder.length > 0)
      warnings.push({
        id: 'milder-than-harmonised',
        text: `${name}: the record is milder than the harmonised entry ${entry.index} (${formatAct(entry.act)}) for ${milder.join(', ')}`,
      });
  }
  if (entry && entry.supplemental.length > 0)
    warnings.push({
      id: 'supplemental-replaced',
      text: `${name}: the hazards of the record replace the harmonised entry ${entry.index} with its ${entry.supplemental.join(', ')}`,
      cite: 'CLP Annex VI',
    });
  if (hazards.length === 0 && !given.source)
    warnings.push({
      id: 'no-source',
      text: `${name}: \`hazards: []\` without a source; name what it rests on`,
    });
  return {
    data: blank({
      hazards,
      limits: given.limits ?? [],
      ate: given.ate ?? {},
      mFactors: factors(given.mFactors ?? {}),
      peroxide: given.peroxide ?? null,
      unknown: given.unknown.length > 0 ? new Set(given.unknown) : nothing,
      source: given.source ? `record: ${given.source}` : 'record',
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
  const added = limits || ate || mFactors || peroxide ? ' with values from the record' : '';
  return blank({
    hazards: entry.hazards,
    limits: limits ? [...entry.limits, ...limits] : entry.limits,
    ate: ate ? { ...entry.ate, ...ate } : entry.ate,
    mFactors: factors({ ...entry.mFactors, ...mFactors }),
    peroxide: peroxide ?? null,
    unknown: unknown.length > 0 ? new Set(unknown) : nothing,
    supplemental: entry.supplemental,
    supplementalLimits: entry.supplementalLimits,
    source: `CLP Annex VI ${entry.index}, ${formatAct(entry.act)}${added}`,
    minimum: entry.minimum,
  });
}

function fromEntry({ name, given }: Constituent, entry: HarmonisedEntry): Resolved {
  const adds = given.limits || given.ate || given.mFactors || given.peroxide || given.unknown.length > 0;
  const warnings: Warning[] = entry.minimum
    ? [
        {
          id: 'minimum-classification',
          text: `${name}: harmonised entry ${entry.index} gives a minimum classification (*) for ${entry.hazards
            .filter(({ minimum }) => minimum)
            .map(({ code }) => code)
            .join(', ')}; data may show a more severe category`,
          cite: 'CLP Annex VI 1.2.1',
        },
      ]
    : [];
  return {
    data: adds ? dataOf(entry, given) : entryData(entry),
    entry,
    warnings,
  };
}

const blank = (known: Partial<IngredientData> & { readonly source: string }): IngredientData => ({
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
function milderThan(own: readonly Hazard[], harmonised: readonly Hazard[]): string[] {
  return harmonised
    .filter(theirs => {
      const same = own.filter(
        ours =>
          family(ours) === family(theirs) &&
          (ours.route === theirs.route || ours.route === null || theirs.route === null),
      );
      return !same.some(ours => severity(ours) >= severity(theirs));
    })
    .map(({ code, route }) => (route ? `${code} (${route})` : code));
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
