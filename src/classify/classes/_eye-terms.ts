import type { Exact } from '../../quantity/exact.ts';
import type { Context } from '../context.ts';
import { hazardsOf, type Ingredient, limitsOf, lowestBound } from '../ingredient.ts';
import type { ReadingId } from '../readings.ts';
import { genericTerm, type SumTerm, specificTerm } from '../sums.ts';

/** Skin corrosion and serious eye damage both count; an ingredient with both counts once (Table A.3.3, Note a). */
export const isDamaging = (ingredient: Ingredient): boolean =>
  hazardsOf(ingredient, 'Eye Dam.').length > 0 || hazardsOf(ingredient, 'Skin Corr.').length > 0;

/** Irritant categories of an ingredient. */
export const irritantCategories = (ingredient: Ingredient): readonly string[] =>
  hazardsOf(ingredient, 'Eye Irrit.').map(({ category }) => category);

const noLimits = { damage: [], irritation: [] } as const;

/** Specific limits for the eye that count. */
export const eyeLimits = ({ applyLimits }: Context, ingredient: Ingredient) => {
  if (!applyLimits) return noLimits;
  return { damage: limitsOf(ingredient, 'Eye Dam.'), irritation: limitsOf(ingredient, 'Eye Irrit.') };
};

/** The specific limit for damage, else the upper end of a range for irritation alone (reading `eye-from-irritant-range`). */
export function ownDamageLimit(context: Context, ingredient: Ingredient, used: Set<ReadingId>): Exact | null {
  const { damage, irritation } = eyeLimits(context, ingredient);
  const own = lowestBound(damage);
  if (own || !isDamaging(ingredient)) return own;
  const upper = irritation.find(({ high }) => high !== null)?.high ?? null;
  if (upper) used.add('eye-from-irritant-range');
  return upper;
}

/** What an ingredient adds towards Category 1: its specific limit, else the table's 3 %. */
export function damageTerm(context: Context, ingredient: Ingredient, used: Set<ReadingId>): SumTerm | null {
  const own = ownDamageLimit(context, ingredient, used);
  if (own) return specificTerm(ingredient, own);
  return isDamaging(ingredient) ? genericTerm(ingredient, context.basis.eye.damage.percent) : null;
}

/** What an ingredient adds towards Category 2: its specific limit, else 10 x for damaging and 1 x for irritating ones. */
export function irritantTerm(context: Context, ingredient: Ingredient): SumTerm | null {
  const { irritant, damageWeight } = context.basis.eye;
  const { damage, irritation } = eyeLimits(context, ingredient);
  const own = lowestBound(irritation);
  if (own) return specificTerm(ingredient, own);
  if (damage.length > 0 || isDamaging(ingredient)) {
    const low = lowestBound(damage);
    if (low && low.value < irritant.percent / damageWeight.factor)
      return specificTerm(ingredient, low, damageWeight.factor);
    return genericTerm(ingredient, irritant.percent, damageWeight.factor);
  }
  return hazardsOf(ingredient, 'Eye Irrit.').length > 0 ? genericTerm(ingredient, irritant.percent) : null;
}
