import type { AcuteKey, AcuteToxicityRules } from '../../reference/thresholds.ts';
import type { Context } from '../context.ts';
import { type Ingredient, inhalationFormOf } from '../ingredient.ts';
import type { ReadingId } from '../readings.ts';
import { type Estimate, estimateOf, isInhaled, knownInAnotherForm } from './_acute-estimate.ts';

/** An ingredient with its estimate. */
export interface Counted {
  readonly ingredient: Ingredient;
  readonly estimate: Estimate;
}

/** What the ingredients bring to the formula. */
export interface Gathered {
  readonly counted: readonly Counted[];
  /** Relevant ingredients of unknown toxicity: at 1 % or more, or marked as relevant. */
  readonly unknown: readonly Ingredient[];
  /** With an estimate, but below the cut-off for relevant ingredients. */
  readonly below: readonly Counted[];
  /** The category in which every ingredient of the mixture lies, or null. */
  readonly shared: string | null;
}

const endpointOf = (key: AcuteKey) =>
  key === 'oral' ? 'acute-oral' : key === 'dermal' ? 'acute-dermal' : 'acute-inhalation';

/**
 * Ingredients that count (A.1.3.6.1(a)), that are relevant (A.1.3.3(a)), and that are unknown (A.1.3.6.2.3). Those
 * without an estimate are presumed not toxic unless the record or missing data make them unknown (A.1.3.6.1(b)).
 */
export function gatherEstimates(
  { mixture, basis, scale, take }: Context,
  key: AcuteKey,
  used: Set<ReadingId>,
): Gathered {
  const rules = basis.acuteToxicity;
  const chosen = take('inhalation-form');
  const unnamedForm = chosen === 'by-state' ? inhalationFormOf(mixture.form) : (chosen as AcuteKey);
  const counted: Counted[] = [];
  const unknown: Ingredient[] = [];
  const below: Counted[] = [];
  let shared: string | null | undefined;
  for (const ingredient of mixture.ingredients) {
    const { percent, data } = ingredient;
    // The lower end of a range may be nothing.
    if (percent.value === 0) continue;
    const estimate = estimateOf(ingredient, key, rules, unnamedForm, scale);
    shared = shared === undefined || shared === estimate?.category ? (estimate?.category ?? null) : null;
    if (!estimate) {
      const relevant = ingredient.relevant || scale.reaches(percent, rules.unknown.relevantFrom.percent);
      if (isUnknown(ingredient, key, take, used) && relevant) unknown.push(ingredient);
      continue;
    }
    if (scale.compare(estimate.value, rules.countsUpTo[key]) > 0) continue;
    if (estimate.reading) used.add(estimate.reading);
    if (estimate.category === null && isInhaled(key)) used.add('ate-above-category-4');
    if (estimate.converted && data.minimum) used.add('minimum-category');
    if (ingredient.relevant || scale.reaches(percent, floorOf(estimate, rules)))
      counted.push({ ingredient, estimate });
    else {
      used.add('below-cut-off');
      below.push({ ingredient, estimate });
    }
  }
  return { counted, unknown, below, shared: shared ?? null };
}

/** Whether nothing is known of an ingredient by a route (A.1.3.6.2.3; reading `no-entry-for-route`). */
export function isUnknown(
  ingredient: Ingredient,
  key: AcuteKey,
  take: Context['take'],
  used: Set<ReadingId>,
): boolean {
  const { unknown, hazards } = ingredient.data;
  if (unknown.has(endpointOf(key))) return !knownInAnotherForm(ingredient, key);
  if (hazards.length === 0) return false;
  used.add('no-entry-for-route');
  return take('no-entry-for-route') === 'unknown' && !knownInAnotherForm(ingredient, key);
}

/** Percent from which an ingredient of this estimate is relevant. */
export const floorOf = ({ category }: Estimate, { relevantFrom }: AcuteToxicityRules): number =>
  Number(relevantFrom[category ?? '5']);
