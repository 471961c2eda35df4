import type { Exact } from '../../quantity/exact.ts';
import type { Ingredient, Mixture } from '../ingredient.ts';

/**
 * Which way a rule gets worse: the weight of one percent of each constituent in its sum. Caps hold constituents below
 * a concentration from which they count no longer.
 */
export interface Objective {
  readonly weights: readonly number[];
  readonly caps?: readonly { readonly constituent: number; readonly below: Exact }[];
}

/** An objective from the weight of each ingredient; null where no ingredient weighs anything. */
export function objective(
  { ingredients }: Mixture,
  weightOf: (ingredient: Ingredient) => number,
  caps: Objective['caps'] = [],
): Objective | null {
  const weights = ingredients.map(weightOf);
  return weights.some(weight => weight !== 0) ? { weights, caps } : null;
}

/** Those that weigh something. */
export const objectives = (...found: readonly (Objective | null)[]): readonly Objective[] =>
  found.filter(each => each !== null);

/** Weight of a term in a sum: one percent over the concentration that alone would reach the limit. */
export const weightOfTerm = (term: { readonly limit: Exact } | null): number =>
  term ? 1 / term.limit.value : 0;
