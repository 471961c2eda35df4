import data from '../../../hazard-data/sheet/property-forms.json' with { type: 'json' };
import type {
  FigureName,
  IngredientProperties,
  SourcedFigure,
} from '../../reference/properties/ingredient-properties.ts';
import type { SheetValue } from './content.ts';
import { ingredients } from './disclosure.ts';
import { figure, fill } from './fill.ts';
import type { SheetInput } from './input.ts';
import { secretsOf } from './secrets.ts';
import { inScales } from './units.ts';

/** An ingredient that the sheet may name, with what reference works know of it. */
export interface KnownIngredient {
  readonly name: string;
  readonly percent: number;
  readonly properties: IngredientProperties;
}

/** Percent from which the properties of an ingredient say something of the product: as for advice. */
const FROM = 1;
/** Degrees Celsius of a room, for what is liquid and what is gas. */
const ROOM = 20;

/** Ingredients of one percent or more that section 3 names and whose identity is not withheld, and water. */
export function knownIngredients(input: SheetInput): readonly KnownIngredient[] {
  const { identity, name: told } = secretsOf(input);
  return ingredients(input).flatMap(({ classified: { cas, high, water }, listed, index }) => {
    const name = told(index);
    if (!(listed || water) || identity.has(index) || high.value < FROM) return [];
    const properties = water ? input.properties.water : input.properties.of(cas);
    return properties ? [{ name, percent: high.value, properties }] : [];
  });
}

/** Whether every constituent, named or not, is known to have a property of the table. */
export const everyConstituent = (
  { classification, properties: table }: SheetInput,
  has: (properties: IngredientProperties) => boolean,
): boolean =>
  classification.constituents.every(({ cas, water }) => {
    const properties = water ? table.water : table.of(cas);
    return properties !== null && has(properties);
  });

/** What stands for a figure of the product that nobody measured: those of its ingredients. */
export interface IngredientFigures {
  readonly text: string;
  readonly values: readonly SheetValue[];
}

/** Which figures a row of section 9 takes from ingredients, and of which ones they tell something. */
const ROWS: Readonly<
  Record<
    string,
    { readonly figures: readonly FigureName[]; of(at: IngredientProperties, form: string): boolean }
  >
> = {
  'melting-point': { figures: ['meltingPoint'], of: (at, form) => form === 'solid' || isLiquid(at) },
  'boiling-point': { figures: ['boilingPoint'], of: (at, form) => isVolatile(at, form) },
  'explosion-limits': { figures: ['lowerExplosiveLimit', 'upperExplosiveLimit'], of: () => true },
  'flash-point': { figures: ['flashPoint'], of: () => true },
  'auto-ignition': { figures: ['autoIgnition'], of: () => true },
  partition: { figures: ['logKow'], of: ({ burns }) => burns !== false },
  'vapor-pressure': { figures: ['vaporPressure'], of: (at, form) => isVolatile(at, form) },
};

const boils = ({ figures }: IngredientProperties): number | undefined => figures.boilingPoint?.value;

function isLiquid({ figures }: IngredientProperties): boolean {
  const { meltingPoint: melts, boilingPoint } = figures;
  return melts !== undefined && melts.value <= ROOM && (boilingPoint?.value ?? 0) > ROOM;
}

/** Of a gas that is dissolved in a liquid product the figures of the pure gas would mislead. */
const isVolatile = (at: IngredientProperties, form: string): boolean => {
  const boiling = boils(at);
  if (boiling === undefined || boiling > data.volatileUpTo.celsius) return false;
  return form === 'liquid' ? boiling > ROOM : form !== 'solid';
};

/** The figures of ingredients for a row of section 9; null where none is known. */
export function ingredientFigures(input: SheetInput, row: string): IngredientFigures | null {
  const { properties: words } = input.words.sheet;
  const known = knownIngredients(input);
  if (row === 'vapor-density') return densities(input, known);
  const rule = ROWS[row];
  if (!rule) return null;
  const found = known.flatMap(({ name, properties }) => {
    if (!rule.of(properties, input.record.form)) return [];
    const figures = rule.figures.flatMap(id => {
      const at = properties.figures[id];
      return at ? [{ id, at }] : [];
    });
    return figures.length > 0 ? [{ name, figures }] : [];
  });
  if (found.length === 0) return null;
  const list = found.map(({ name, figures }) =>
    fill(words.ingredient, { name, value: figures.map(({ id, at }) => worded(input, id, at)).join(', ') }),
  );
  const letters = new Set(found.flatMap(({ figures }) => figures.map(({ at }) => at.source)));
  return {
    text: fill(words.ingredients, { list: list.join('; '), sources: shortTitles(input, letters) }),
    values: found.flatMap(({ name, figures }) =>
      figures.map(({ id, at }) => ({
        property: id,
        of: name,
        value: at.value,
        unit: input.properties.units[id],
        source: input.properties.sources[at.source]!.short,
      })),
    ),
  };
}

const shortTitles = ({ properties }: SheetInput, letters: Iterable<string>): string =>
  [...letters].map(letter => properties.sources[letter]!.short).join(', ');

const worded = (input: SheetInput, id: FigureName, { value }: SourcedFigure): string =>
  inScales(input.words.sheet.properties.figures[id], value, figure(value, 4, input.words.decimalMark), input);

/** g/mol of dry air. */
const AIR = 28.96;

/** Vapor against air, from the molar mass; of what evaporates. */
function densities(
  { words, record }: SheetInput,
  known: readonly KnownIngredient[],
): IngredientFigures | null {
  const { properties: phrases } = words.sheet;
  const found = known.flatMap(({ name, properties }) => {
    const boiling = boils(properties);
    const { molarMass } = properties;
    const gaseous = boiling !== undefined && boiling <= data.volatileUpTo.celsius;
    return molarMass && gaseous ? [{ name, value: Number((molarMass / AIR).toPrecision(2)) }] : [];
  });
  if (found.length === 0 || record.form === 'solid') return null;
  const list = found.map(({ name, value }) =>
    fill(phrases.ingredient, { name, value: figure(value, 3, words.decimalMark) }),
  );
  return {
    text: fill(phrases.vaporDensities, { list: list.join('; ') }),
    values: found.map(({ name, value }) => ({
      property: 'relativeVaporDensity',
      of: name,
      value,
      unit: null,
      source: null,
    })),
  };
}
