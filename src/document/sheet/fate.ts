import data from '../../../hazard-data/sheet/property-forms.json' with { type: 'json' };
import type { Fate, IngredientProperties } from '../../reference/properties/ingredient-properties.ts';
import { fill } from './fill.ts';
import { type KnownIngredient, knownIngredients } from './ingredient-figures.ts';
import type { SheetInput } from './input.ts';

type Sentence = readonly [phrase: string, of: (known: IngredientProperties) => boolean];

/** One sentence for all ingredients that it holds of. */
const told = (known: readonly KnownIngredient[], sentences: readonly Sentence[]): readonly string[] =>
  sentences.flatMap(([phrase, of]) => {
    const names = known.filter(({ properties }) => of(properties)).map(({ name }) => name);
    const limit = data.bioaccumulationFrom.logKow;
    return names.length > 0 ? [fill(phrase, { names: names.join('; '), limit })] : [];
  });

const organic = (input: SheetInput, except: ReadonlySet<string>): readonly KnownIngredient[] =>
  knownIngredients(input).filter(({ name, properties }) => properties.fate !== null && !except.has(name));

/**
 * Degradation of the ingredients from reference data.
 * @param except names of those of which the record says something itself
 */
export function persistence(input: SheetInput, except: ReadonlySet<string>): readonly string[] {
  const { further: words } = input.words.sheet;
  const is =
    (fate: Fate) =>
    (at: IngredientProperties): boolean =>
      at.fate === fate;
  return told(organic(input, except), [
    [words.ready, is('ready')],
    [words.notReady, is('not-ready')],
    [words.inorganic, is('inorganic')],
  ]);
}

/** Whether the ingredients are known to accumulate, by their partition coefficient. */
export function bioaccumulation(input: SheetInput, except: ReadonlySet<string>): readonly string[] {
  const { further: words } = input.words.sheet;
  const limit = data.bioaccumulationFrom.logKow;
  const kow = ({ figures }: IngredientProperties): number | undefined => figures.logKow?.value;
  return told(known(input, except), [
    [words.lowPotential, at => at.fate !== 'inorganic' && (kow(at) ?? limit) < limit],
    [words.highPotential, at => (kow(at) ?? 0) >= limit],
    [words.noPotential, at => at.fate === 'inorganic'],
  ]);
}

/** Whether the ingredients move with water in soil, by solubility and partition coefficient. */
export function mobility(input: SheetInput, except: ReadonlySet<string>): readonly string[] {
  const { further: words } = input.words.sheet;
  const dissolves = ({ water }: IngredientProperties): boolean => water === 'miscible' || water === 'soluble';
  const binds = ({ water, figures }: IngredientProperties): boolean =>
    water === 'insoluble' && (figures.logKow?.value ?? data.mobileUpTo.logKow) >= data.mobileUpTo.logKow;
  return told(known(input, except), [
    [words.mobile, dissolves],
    [words.bound, binds],
  ]);
}

const known = (input: SheetInput, except: ReadonlySet<string>): readonly KnownIngredient[] => {
  const water = new Set(input.classification.constituents.filter(each => each.water).map(({ name }) => name));
  return knownIngredients(input).filter(({ name }) => !water.has(name) && !except.has(name));
};
