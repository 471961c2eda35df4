import type { SpecificLimit } from '../../notation/limit.ts';
import type { Context } from '../context.ts';
import type { Because } from '../facts/because.ts';
import { ofHealth } from '../facts/provision.ts';
import { hazardsOf, type Ingredient, limitsOf, lowestBound } from '../ingredient.ts';
import type { ReadingId } from '../readings.ts';
import { becauseOfSum, genericTerm, reachesLimit, type SumTerm, specificTerm } from '../sums.ts';
import { isRelevant, noteLimits, type Sorted } from './_skin-and-eye.ts';

/** Corrosive categories, the most severe first; the last is one without sub-category. */
export const levels = ['1A', '1B', '1C', '1'] as const;
type Level = (typeof levels)[number];

const rank = (level: string): number => levels.indexOf(level as Level);

/** The most severe corrosive category of an ingredient, or null. */
export function corrosiveCategory(ingredient: Ingredient): Level | null {
  let worst: Level | null = null;
  for (const { category } of hazardsOf(ingredient, 'Skin Corr.'))
    if (!worst || rank(category) < rank(worst)) worst = category as Level;
  return worst;
}

/** Specific limits for corrosion that count. */
export const corrosionLimits = ({ applyLimits }: Context, ingredient: Ingredient) =>
  applyLimits ? limitsOf(ingredient, 'Skin Corr.') : [];

/** Table A.2.3, Category 1 with its Note on sub-categories; CLP and UN Table 3.2.3. */
export function corrosiveBySum(
  context: Context,
  { additive, alone }: Sorted,
  used: Set<ReadingId>,
): { category: string; because: Because } | null {
  const { basis, scale } = context;
  const { percent } = basis.skin.corrosive;
  const corrosives: Corrosive[] = [];
  for (const ingredient of additive) {
    const corrosive = corrosiveOf(context, ingredient);
    if (corrosive.category || corrosive.limits.length > 0) corrosives.push(corrosive);
  }
  if (corrosives.length === 0) return null;
  const at = (level: Level) =>
    corrosives.map(each => termAt(each, level, percent)).filter(term => term !== null);
  const outcome = (category: Level, terms: readonly SumTerm[]) => {
    noteLimits(terms, used);
    if (terms.some(({ specific }) => specific)) used.add('limit-sub-category');
    const because = becauseOfSum(terms, {
      rule: 'corrosive',
      limit: percent,
      reached: true,
      cite: ofHealth(basis, basis.skin.subCategories.cite),
      limitsCite: ofHealth(basis, basis.specificLimits.cite),
      category,
    });
    return { category, because };
  };
  const all = at('1');
  if (!reachesLimit(scale, all, percent)) return null;
  const relevant = alone.filter(ingredient => isRelevant(scale, ingredient, basis.skin.relevantFrom.percent));
  const unsplit = [...all.map(({ ingredient }) => ingredient), ...relevant].some(
    ingredient =>
      corrosiveCategory(ingredient) === '1' &&
      !corrosionLimits(context, ingredient).some(({ category }) => category !== '1'),
  );
  if (unsplit) {
    used.add('unsubcategorised-corrosive');
    return outcome('1', all);
  }
  for (const level of ['1A', '1B', '1C'] as const) {
    const terms = at(level);
    if (reachesLimit(scale, terms, percent)) return outcome(level, terms);
  }
  return outcome('1', all);
}

/** What an ingredient adds towards Category 1 at a level: its specific limit of that or a worse level, else the table's 5 %. */
export const corrosiveTerm = (context: Context, ingredient: Ingredient, level: Level): SumTerm | null =>
  termAt(corrosiveOf(context, ingredient), level, context.basis.skin.corrosive.percent);

interface Corrosive {
  readonly ingredient: Ingredient;
  readonly category: Level | null;
  /** Specific limits that count. */
  readonly limits: readonly SpecificLimit[];
}

const corrosiveOf = (context: Context, ingredient: Ingredient): Corrosive => ({
  ingredient,
  category: corrosiveCategory(ingredient),
  limits: corrosionLimits(context, ingredient),
});

function termAt({ ingredient, category, limits }: Corrosive, level: Level, percent: number): SumTerm | null {
  if (limits.length > 0) {
    const low = lowestBound(limits.filter(limit => rank(limit.category) <= rank(level)));
    return low && specificTerm(ingredient, low);
  }
  return category && rank(category) <= rank(level) ? genericTerm(ingredient, percent) : null;
}
