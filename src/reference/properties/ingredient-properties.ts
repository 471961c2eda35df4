import data from '../../../hazard-data/substances/properties.json' with { type: 'json' };

/** A figure with the work it is from. */
export interface SourcedFigure {
  readonly value: number;
  /** Letter of the source, a key of `propertySources`. */
  readonly source: string;
}

/** The properties that have figures, in the order of the columns. */
const FIGURES = [
  'meltingPoint',
  'boilingPoint',
  'flashPoint',
  'lowerExplosiveLimit',
  'upperExplosiveLimit',
  'autoIgnition',
  'vaporPressure',
  'logKow',
] as const;

export type FigureName = (typeof FIGURES)[number];

/** Units of the figures; null for a ratio or a logarithm. */
const figureUnits: Readonly<Record<FigureName, string | null>> = {
  meltingPoint: 'C',
  boilingPoint: 'C',
  flashPoint: 'C',
  lowerExplosiveLimit: '% by volume',
  upperExplosiveLimit: '% by volume',
  autoIgnition: 'C',
  vaporPressure: 'kPa at 20 C',
  logKow: null,
};

export type WaterSolubility = 'miscible' | 'soluble' | 'slightly' | 'insoluble';
export type Fate = 'ready' | 'not-ready' | 'inorganic';

/** What is known of a common ingredient from reference works; a figure that is missing there is absent. */
export interface IngredientProperties {
  /** g/mol */
  readonly molarMass: number | null;
  readonly figures: Readonly<Partial<Record<FigureName, SourcedFigure>>>;
  readonly water: WaterSolubility | null;
  readonly fate: Fate | null;
  readonly burns: boolean | null;
  /** Further common names. */
  readonly names: readonly string[];
}

const WATER: Readonly<Record<string, WaterSolubility>> = {
  m: 'miscible',
  s: 'soluble',
  l: 'slightly',
  i: 'insoluble',
};
const FATE: Readonly<Record<string, Fate>> = { r: 'ready', n: 'not-ready', o: 'inorganic' };

/** Properties of ingredients, searched by CAS number. */
export interface PropertyTable {
  /** Null where the table has no such number. */
  of(cas: string | null): IngredientProperties | null;
  readonly units: typeof figureUnits;
  /** Works that figures are from, by letter. */
  readonly sources: Readonly<Record<string, { readonly short: string; readonly title: string }>>;
  readonly water: IngredientProperties;
}

/** CAS number of water. */
const WATER_NUMBER = '7732-18-5';

/** The table of the package (hazard-data/substances/properties.json). */
export function openProperties(): PropertyTable {
  const rows = new Map(data.rows.map(read));
  return {
    of: cas => (cas !== null && rows.get(cas)) || null,
    units: figureUnits,
    sources: data.sources,
    water: rows.get(WATER_NUMBER)!,
  };
}

function read(row: string): [string, IngredientProperties] {
  const [cas, mass, ...cells] = row.split('\t');
  const figures: Partial<Record<FigureName, SourcedFigure>> = {};
  for (const [at, name] of FIGURES.entries()) {
    const cell = cells[at] ?? '';
    if (cell !== '') figures[name] = { value: Number(cell.slice(0, -1)), source: cell.slice(-1) };
  }
  const [water, fate, burns, names] = cells.slice(FIGURES.length);
  return [
    cas!,
    {
      molarMass: mass ? Number(mass) : null,
      figures,
      water: WATER[water ?? ''] ?? null,
      fate: FATE[fate ?? ''] ?? null,
      burns: burns ? burns === 'y' : null,
      names: names ? names.split('; ') : [],
    },
  ];
}
