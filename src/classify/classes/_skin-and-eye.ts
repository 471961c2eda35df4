import type { SpecificLimit } from '../../notation/limit.ts';
import type { Exact } from '../../quantity/exact.ts';
import type { Scale } from '../../quantity/scale.ts';
import type { CitedPercent } from '../../reference/thresholds.ts';
import type { ClassResult, Context, hazardIn } from '../context.ts';
import type { PhFinding } from '../extreme-ph.ts';
import type { Because, IngredientRule } from '../facts/because.ts';
import { ofHealth } from '../facts/provision.ts';
import { type Ingredient, lowestBound, type Mixture } from '../ingredient.ts';
import { type Objective, objective } from '../ranges/objective.ts';
import type { ReadingId } from '../readings.ts';
import { judgedSevere } from '../strong.ts';
import { becauseOfOne, figure, type SumTerm } from '../sums.ts';

/** The ingredients that concern skin or eye, in the groups that the law judges apart. */
export interface Sorted {
  /** Summed. */
  readonly additive: readonly Ingredient[];
  /** Judged alone: summing does not hold for them. */
  readonly alone: readonly Ingredient[];
  /** Below the cut-off for relevant ingredients. */
  readonly below: readonly Ingredient[];
}

/** Limits of two classes; mostly one or both have none. */
export const both = (a: readonly SpecificLimit[], b: readonly SpecificLimit[]): readonly SpecificLimit[] =>
  a.length === 0 ? b : b.length === 0 ? a : [...a, ...b];

/**
 * Relevant ingredients in two groups, summed and judged alone, and those left out: A.2.3.3.1, A.3.3.3.1; CLP 3.2.3.3.1,
 * 3.3.3.3.1 with 1.1.2.2.2, by which a lower specific limit lowers the cut-off.
 * @param limitsOf specific limits that count for an ingredient.
 * @param isClassified whether an ingredient has a hazard that counts.
 */
export function sortIngredients(
  { mixture, scale }: Context,
  { percent: generic }: CitedPercent,
  limitsOf: (ingredient: Ingredient) => readonly SpecificLimit[],
  isClassified: (ingredient: Ingredient) => boolean,
  used: Set<ReadingId>,
): Sorted {
  const additive: Ingredient[] = [];
  const alone: Ingredient[] = [];
  const below: Ingredient[] = [];
  for (const ingredient of mixture.ingredients) {
    const limits = limitsOf(ingredient);
    if (limits.length === 0 && !isClassified(ingredient)) continue;
    const floor = floorOf(limits, generic);
    if (!ingredient.additive) alone.push(ingredient);
    else if (isRelevant(scale, ingredient, floor)) additive.push(ingredient);
    else below.push(ingredient);
  }
  if (alone.length > 0) used.add('not-additive');
  if (below.length > 0) used.add('below-cut-off');
  return { additive, alone, below };
}

/** Percent from which an ingredient is relevant: the generic cut-off, or a lower specific limit. */
export function floorOf(limits: readonly SpecificLimit[], generic: number): number {
  const lowest = lowestBound(limits);
  return lowest && lowest.value < generic ? lowest.value : generic;
}

/** Whether an ingredient counts: at its cut-off, or said to be relevant by the record. */
export const isRelevant = (scale: Scale, { relevant, percent }: Ingredient, floor: number): boolean =>
  relevant || scale.reaches(percent, floor);

/**
 * The results of a class for skin or eye. What the cut-off left out, and what set an extreme pH aside, goes with
 * every reason; the warnings on that not where the ingredients alone give Category 1.
 */
export function resultsOf(
  name: string,
  cutOff: CitedPercent,
  { below }: Sorted,
  { because: byPh, setAside, warnings }: PhFinding,
  used: ReadonlySet<ReadingId>,
): {
  readonly given: (hazard: ReturnType<typeof hazardIn>, because: Because) => ClassResult;
  readonly notGiven: (because: Because) => ClassResult;
} {
  const floor = cutOff.percent;
  const leftOut = below
    .filter(({ percent }) => percent.value > 0)
    .map(({ index, percent }) => ({ constituent: index, amount: percent, from: floor }));
  const told = (because: Because): Because => {
    if (leftOut.length === 0 && !setAside) return because;
    return { ...because, ...(leftOut.length > 0 && { leftOut }), ...(setAside && { setAside }) };
  };
  return {
    given: (hazard, because) => ({
      class: name,
      outcome: 'classified',
      hazard,
      because: told(because),
      readings: [...used],
      warnings: hazard.category.startsWith('1') && !byPh ? [] : warnings,
      floor,
    }),
    notGiven: because => ({
      class: name,
      outcome: 'not-classified',
      because: told(because),
      readings: [...used],
      warnings,
      floor,
    }),
  };
}

/** Each ingredient for which summing does not hold, by itself. */
export const eachAlone = (mixture: Mixture): readonly (Objective | null)[] =>
  mixture.ingredients
    .filter(({ additive }) => !additive)
    .map(alone => objective(mixture, ({ index }) => (index === alone.index ? 1 : 0)));

/** Notes the readings on which a sum with specific limits rests. */
export const noteLimits = (terms: readonly SumTerm[], used: Set<ReadingId>): void => {
  if (terms.some(({ specific }) => specific)) used.add('limit-ratio').add('limit-upper-end');
};

/**
 * The first ingredient judged alone that reaches its limit (Tables A.2.4, A.3.4; CLP and UN Tables 3.2.4, 3.3.4).
 * @param limitOf percent from which an ingredient decides, and whether that is a specific limit; null where it cannot.
 */
export function firstAtLimit(
  { basis, scale }: Context,
  alone: readonly Ingredient[],
  limitOf: (ingredient: Ingredient) => { readonly percent: Exact; readonly specific: boolean } | null,
  rule: Extract<IngredientRule, 'corrosive-alone' | 'irritant-alone' | 'damaging-alone'>,
  paragraph: string,
  used: Set<ReadingId>,
): Because | null {
  for (const ingredient of alone) {
    const limit = limitOf(ingredient);
    if (!limit) continue;
    const { percent, specific } = limit;
    if (specific) used.add('not-additive-limit');
    if (!scale.reaches(ingredient.percent, percent.value)) continue;
    const cites = [ofHealth(basis, paragraph)];
    if (specific) cites.push(ofHealth(basis, basis.specificLimits.cite));
    return becauseOfOne(ingredient, percent, specific, rule, cites);
  }
  return null;
}

/** Each strong acid or base of a mixture without a pH, by itself. */
export const strongAlone = (context: Context): readonly (Objective | null)[] =>
  judgedSevere(context).map(strong =>
    objective(context.mixture, ({ index }) => (index === strong.index ? 1 : 0)),
  );

/**
 * Category 1 by a strong acid or base from the table's percent while the pH, which would decide, is not known
 * (A.2.3.3.4, Table A.2.4; A.3.3.3.4, Table A.3.4; CLP and UN 3.2.3.3.4, 3.3.3.3.4).
 * @param hasOwnLimit whether specific limits that count decide for an ingredient (CLP Article 10).
 */
export function strongAtLimit(
  context: Context,
  limit: number,
  paragraph: string,
  hasOwnLimit: (ingredient: Ingredient) => boolean,
  used: Set<ReadingId>,
): Because | null {
  const found = judgedSevere(context).find(
    ingredient => !hasOwnLimit(ingredient) && context.scale.reaches(ingredient.percent, limit),
  );
  if (!found) return null;
  used.add('ph-missing');
  return becauseOfOne(found, figure(limit), false, 'strong-without-ph', [ofHealth(context.basis, paragraph)]);
}
