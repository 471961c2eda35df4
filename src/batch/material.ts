import type { Ingredient } from '../classify/ingredient.ts';
import { groupsOf } from '../classify/reactivity.ts';
import type { Exact } from '../quantity/exact.ts';

/** An ingredient of a raw material. */
export interface BatchIngredient extends Pick<Ingredient, 'name' | 'cas' | 'water' | 'data'> {
  /** Percent of the material, the higher end of a range. */
  readonly percent: number;
}

/** One line of the formula as it is weighed: a substance, or what comes in a drum. */
export interface BatchMaterial {
  readonly name: string;
  readonly supplier: string | null;
  /** Percent of the batch, both ends of a range. */
  readonly low: Exact;
  readonly high: Exact;
  /** g/mL; null where none is known. */
  readonly density: Exact | null;
  /** Temperature of the density as written; null where none is named. */
  readonly densityAt: string | null;
  readonly ingredients: readonly BatchIngredient[];
  /** Hazard statements that the material itself would bear. */
  readonly statements: readonly string[];
  /** Physical hazards that its ingredients have and no test of the material decides. */
  readonly untested: readonly string[];
}

/** A group of the reactivity table with the ingredients that belong to it and the percent of each. */
export type GroupedIngredients = readonly {
  readonly ingredient: BatchIngredient;
  readonly groups: ReadonlySet<string>;
}[];

/** Ingredients with their reactive groups. */
export const grouped = ({ ingredients }: Pick<BatchMaterial, 'ingredients'>): GroupedIngredients =>
  ingredients.map(ingredient => ({ ingredient, groups: groupsOf(ingredient) }));

/** Names of the ingredients that belong to any of the groups, from a percent of the material. */
export const namesIn = (all: GroupedIngredients, ids: readonly string[], from: number): readonly string[] =>
  all
    .filter(({ ingredient, groups }) => ingredient.percent >= from && ids.some(id => groups.has(id)))
    .map(({ ingredient }) => ingredient.name);
