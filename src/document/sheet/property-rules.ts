import data from '../../../hazard-data/sheet/property-forms.json' with { type: 'json' };
import { adviceTexts } from './advice.ts';
import { bodyOf, type ItemBody, type ItemSource } from './content.ts';
import { fill } from './fill.ts';
import { flashPoint } from './flash-point.ts';
import { everyConstituent, ingredientFigures, knownIngredients } from './ingredient-figures.ts';
import type { SheetInput } from './input.ts';
import { inScales } from './units.ts';

const NOT_FOR: Readonly<Record<string, readonly string[]>> = data.notFor;

/** Rows that ask for a flammable vapor. */
const OF_VAPOR = ['explosion-limits', 'auto-ignition'];

/**
 * What stands in a row of section 9 that nobody measured: that it does not apply to the form, what follows from
 * another row or from the composition, and the figures of the ingredients; null where only a measurement can tell.
 */
export function unmeasured(input: SheetInput, row: string): ItemBody | null {
  const { form } = input.record;
  const { properties: words } = input.words.sheet;
  const say = (source: ItemSource, text: string) => bodyOf(source, { text: [text] });
  if (NOT_FOR[row]?.includes(form))
    return say('physical form', fill(words.noParticles, { form: words.forms[form] }));
  const composed = fromComposition(input, row);
  if (composed.final) return say('calculation', composed.final);
  const figures = ingredientFigures(input, row);
  const told = figures ? [figures.text] : withoutFigures(input, row);
  const text = [...composed.lead, ...told];
  const source = figures ? 'reference tables' : 'calculation';
  return bodyOf(source, { text, ...(figures && { values: figures.values }) });
}

/** A sentence that settles the row, or those that go before the figures of the ingredients. */
function fromComposition(
  input: SheetInput,
  row: string,
): { readonly final: string | null; readonly lead: readonly string[] } {
  const { record, classification } = input;
  const { properties: words } = input.words.sheet;
  const settled = (final: string) => ({ final, lead: [] });
  const led = (...lead: readonly string[]) => ({ final: null, lead });
  const point = record.properties.flashPoint?.value;
  const inert = everyConstituent(input, ({ burns }) => burns === false);
  const inorganic = everyConstituent(input, ({ fate, burns }) => fate === 'inorganic' || burns === false);
  const water = classification.constituents.reduce(
    (sum, { water: is, high }) => (is ? sum + high.value : sum),
    0,
  );
  if (OF_VAPOR.includes(row) && record.form === 'liquid') {
    if (point?.kind === 'none') return settled(words.noFlame);
    if (inert) return settled(words.inert);
    const text = row === 'explosion-limits' && point ? flashPoint(input) : null;
    return text ? led(fill(words.fromFlashPoint, { text })) : led();
  }
  switch (row) {
    case 'flammability':
      return flammability(input, inert);
    case 'flash-point':
      return inert ? settled(words.inert) : led();
    case 'ph':
      return water === 0 && record.form !== 'solid' ? settled(words.noWater) : led();
    case 'partition':
      return inorganic && classification.constituents.length > 0
        ? settled(words.inorganic)
        : led(words.noPartition);
    case 'vapor-pressure':
      return record.form === 'solid' && inorganic ? settled(words.noVapor) : led();
    case 'solubility':
      return led(...solubility(input, water));
    case 'decomposition':
      return led(...adviceTexts(input, 'decomposition-temperature'));
    default:
      return led();
  }
}

/** What form and boiling point still tell where no figure of an ingredient is known. */
function withoutFigures(input: SheetInput, row: string): readonly string[] {
  const { record } = input;
  const { properties: words } = input.words.sheet;
  if (record.form !== 'liquid') return [];
  const boiling = record.properties.initialBoilingPoint?.value.value;
  const burning = knownIngredients(input).filter(({ properties }) => properties.burns);
  switch (row) {
    case 'melting-point':
      return [inScales(words.liquid, data.liquidUpTo.celsius, String(data.liquidUpTo.celsius), input)];
    case 'vapor-pressure':
      return boiling !== undefined && boiling >= data.lowVaporFrom.celsius ? [words.lowVapor] : [];
    case 'vapor-density':
      return burning.length > 0
        ? [fill(words.heavier, { names: burning.map(({ name }) => name).join(', ') })]
        : [];
    default:
      return [];
  }
}

/** What flash point and composition say where no class says it. */
function flammability(input: SheetInput, inert: boolean) {
  const { record } = input;
  const { properties: words } = input.words.sheet;
  const settled = (final: string | null) => ({ final, lead: [] });
  if (record.form !== 'liquid') return settled(inert ? words.inertFlammability : null);
  const point = record.properties.flashPoint?.value;
  if (point?.kind === 'none') return settled(words.noFlashFlammability);
  const text = point ? flashPoint(input) : null;
  if (text) return settled(fill(words.combustible, { text }));
  return settled(inert ? words.inertFlammability : null);
}

/** What the share of water and the ingredients say of solubility. */
function solubility(input: SheetInput, water: number): readonly string[] {
  const { properties: words } = input.words.sheet;
  const based = water >= data.solventFrom.percent ? [words.waterBased] : [];
  const list = knownIngredients(input).flatMap(({ name, properties }) =>
    properties.water ? [fill(words.ingredient, { name, value: words.water[properties.water] })] : [],
  );
  return [...based, ...(list.length > 0 ? [fill(words.inWater, { list: list.join('; ') })] : [])];
}
