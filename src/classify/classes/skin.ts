import { always, type ClassRule } from '../class-rule.ts';
import { constant } from '../constant.ts';
import { type ClassResult, type Context, hazardIn } from '../context.ts';
import { extremePh, type PhFinding } from '../extreme-ph.ts';
import type { Because } from '../facts/because.ts';
import { ofHealth } from '../facts/provision.ts';
import { concerns, hazardsOf, type Ingredient, limitsOf, lowestBound } from '../ingredient.ts';
import { type Objective, objective, objectives, weightOfTerm } from '../ranges/objective.ts';
import type { ReadingId } from '../readings.ts';
import { judgedSevere } from '../strong.ts';
import { becauseOfSum, figure, genericTerm, reachesLimit, type SumTerm, specificTerm } from '../sums.ts';
import {
  both,
  eachAlone,
  firstAtLimit,
  noteLimits,
  resultsOf,
  type Sorted,
  sortIngredients,
  strongAlone,
  strongAtLimit,
} from './_skin-and-eye.ts';
import {
  corrosionLimits,
  corrosiveBySum,
  corrosiveCategory,
  corrosiveTerm,
  levels,
} from './_skin-corrosion.ts';

const CLASS = 'Skin Corr./Irrit.';
const skinClasses = ['Skin Corr.', 'Skin Irrit.'];
const isIrritant = (ingredient: Ingredient, category = '2'): boolean =>
  hazardsOf(ingredient, 'Skin Irrit.').some(hazard => hazard.category === category);

const irritationLimits = ({ applyLimits }: Context, ingredient: Ingredient) =>
  applyLimits ? limitsOf(ingredient, 'Skin Irrit.') : [];

/**
 * Skin corrosion and irritation of an untested mixture: A.2.3.1.3 (pH), A.2.3.3.3 with Table A.2.3 (sums),
 * A.2.3.3.4 with Table A.2.4 (ingredients for which summing does not hold); CLP and UN 3.2.3.
 */
export const skin: ClassRule = {
  listed: CLASS,
  isOf: always,
  judge: context => {
    const { basis, mixture } = context;
    const concerned = mixture.properties.pH || concerns(mixture, skinClasses);
    if (concerned || judgedSevere(context).length > 0) return [judge(context)];
    return constant(basis, CLASS, () => [judge(context)]);
  },
  objectives: skinObjectives,
  limitedBy: ['Skin Corr.', 'Skin Irrit.'],
  cutOff: figures => figures.skin.relevantFrom.percent,
};

function judge(context: Context): ClassResult {
  const { basis, scale } = context;
  const rules = basis.skin;
  const used = new Set<ReadingId>();
  const sorted = sortIngredients(
    context,
    rules.relevantFrom,
    ingredient => both(corrosionLimits(context, ingredient), irritationLimits(context, ingredient)),
    ingredient =>
      hazardsOf(ingredient, 'Skin Corr.').length > 0 || hazardsOf(ingredient, 'Skin Irrit.').length > 0,
    used,
  );
  const ph = extremePh(context, rules.extremePh, 'skin', used);
  const { given, notGiven } = resultsOf(CLASS, rules.relevantFrom, sorted, ph, used);

  const corrosive = corrosion(context, sorted, ph.because, used);
  if (corrosive) {
    const { category, because } = corrosive;
    if (category.length > 1) used.add('show-sub-category');
    const shown = category.length > 1 && context.take('show-sub-category') === 'hide' ? '1' : category;
    return given(hazardIn('Skin Corr.', shown), because);
  }

  const terms = sorted.additive
    .map(ingredient => irritantTerm(context, ingredient))
    .filter(term => term !== null);
  noteLimits(terms, used);
  const reached = reachesLimit(scale, terms, rules.irritant.percent);
  const sum = (): Because =>
    becauseOfSum(terms, {
      rule: 'corrosive-and-irritant',
      limit: rules.irritant.percent,
      reached,
      cite: ofHealth(basis, rules.irritant.cite),
      limitsCite: ofHealth(basis, basis.specificLimits.cite),
    });
  const irritant = hazardIn('Skin Irrit.', '2');
  if (reached) return given(irritant, sum());
  const irritantAlone = byOne(context, sorted.alone, 'irritant', used);
  if (irritantAlone) return given(irritant, irritantAlone);
  const mild = mildBySum(context, sorted.additive);
  if (mild) return given(hazardIn('Skin Irrit.', '3'), mild);

  if (terms.length > 0) return notGiven(sum());
  const { percent, cite } = rules.relevantFrom;
  return notGiven({ kind: 'none', rule: 'skin', from: [percent], cites: [ofHealth(basis, cite)] });
}

/** Category 1 by pH with the sub-category of the sum, by the sum, or by an ingredient judged alone. */
function corrosion(
  context: Context,
  sorted: Sorted,
  byPh: PhFinding['because'],
  used: Set<ReadingId>,
): { category: string; because: Because } | null {
  const bySum = corrosiveBySum(context, sorted, used);
  if (byPh && bySum) {
    used.add('ph-sub-category');
    const { category, because } = bySum;
    return {
      category,
      // Spread in a literal this copy was among the slowest lines of a classification.
      because: Object.assign({ sum: { category, because } }, byPh, {
        cites: [...byPh.cites, ...because.cites],
      }),
    };
  }
  if (byPh) return { category: '1', because: byPh };
  if (bySum) return bySum;
  const because = byOne(context, sorted.alone, 'corrosive', used);
  if (because) {
    used.add('not-additive-category');
    return { category: '1', because };
  }
  const strong = strongAtLimit(
    context,
    context.basis.skin.notAdditive.corrosive,
    context.basis.skin.notAdditive.cite,
    ingredient => corrosionLimits(context, ingredient).length > 0,
    used,
  );
  return strong && { category: '1', because: strong };
}

/** What an ingredient adds towards Category 2: its specific limit, else 10 x for corrosives and 1 x for irritants. */
function irritantTerm(context: Context, ingredient: Ingredient): SumTerm | null {
  const { irritant, corrosiveWeight } = context.basis.skin;
  const own = lowestBound(irritationLimits(context, ingredient));
  if (own) return specificTerm(ingredient, own);
  const corrosion = corrosionLimits(context, ingredient);
  if (corrosion.length > 0 || corrosiveCategory(ingredient)) {
    const low = lowestBound(corrosion);
    if (low && low.value < irritant.percent / corrosiveWeight.factor)
      return specificTerm(ingredient, low, corrosiveWeight.factor);
    return genericTerm(ingredient, irritant.percent, corrosiveWeight.factor);
  }
  return isIrritant(ingredient) ? genericTerm(ingredient, irritant.percent) : null;
}

/** Table A.2.4; CLP Table 3.2.4: ingredients judged alone; a specific limit replaces the table's figure. */
function byOne(
  context: Context,
  alone: readonly Ingredient[],
  kind: 'corrosive' | 'irritant',
  used: Set<ReadingId>,
): Because | null {
  const { notAdditive } = context.basis.skin;
  const limitOf = (ingredient: Ingredient) => {
    const corrosion = corrosionLimits(context, ingredient);
    const low = lowestBound(kind === 'corrosive' ? corrosion : irritationLimits(context, ingredient));
    if (low) return { percent: low, specific: true };
    // Below a corrosion limit of its own a corrosive still irritates from the table's figure, as in the sums.
    if (corrosiveCategory(ingredient) !== null || corrosion.length > 0)
      return { percent: figure(notAdditive.corrosive), specific: false };
    const irritates = kind === 'irritant' && isIrritant(ingredient);
    return irritates ? { percent: figure(notAdditive.irritant), specific: false } : null;
  };
  return firstAtLimit(context, alone, limitOf, `${kind}-alone`, notAdditive.cite, used);
}

/** Which way each sum of the class gets worse, and each ingredient judged alone. */
function skinObjectives(context: Context): readonly Objective[] {
  const { mixture, basis } = context;
  const byTerm = (termOf: (ingredient: Ingredient) => SumTerm | null): Objective | null =>
    objective(mixture, ingredient => (ingredient.additive ? weightOfTerm(termOf(ingredient)) : 0));
  const irritates = (ingredient: Ingredient): boolean =>
    corrosiveCategory(ingredient) !== null || hazardsOf(ingredient, 'Skin Irrit.').length > 0;
  return objectives(
    ...levels.map(level => byTerm(ingredient => corrosiveTerm(context, ingredient, level))),
    byTerm(ingredient => irritantTerm(context, ingredient)),
    basis.skin.mild ? objective(mixture, each => (irritates(each) ? 1 : 0)) : null,
    ...eachAlone(mixture),
    ...strongAlone(context),
  );
}

/** Category 3 of UN GHS Table 3.2.3, where the building block is on. */
function mildBySum({ basis, scale }: Context, additive: readonly Ingredient[]): Because | null {
  const { mild, corrosiveWeight, relevantFrom } = basis.skin;
  if (!mild) return null;
  const weightOf = (ingredient: Ingredient) => (corrosiveCategory(ingredient) ? corrosiveWeight.factor : 1);
  const severe = additive.filter(ingredient => corrosiveCategory(ingredient) || isIrritant(ingredient));
  const part = (ingredient: Ingredient) => ({ amount: ingredient.percent, weight: weightOf(ingredient) });
  const bySevere = severe.length > 0 && scale.meets(severe.map(part), relevantFrom.percent);
  const terms = (bySevere ? severe : additive).map(ingredient =>
    genericTerm(ingredient, mild.percent, weightOf(ingredient)),
  );
  const limit = bySevere ? relevantFrom.percent : mild.percent;
  if (!reachesLimit(scale, terms, limit)) return null;
  return becauseOfSum(terms, {
    rule: 'irritant-mild',
    limit,
    reached: true,
    cite: ofHealth(basis, mild.cite),
    category: '3',
  });
}
