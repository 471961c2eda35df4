import type { SpecificLimit } from '../../notation/limit.ts';
import { reaches, show, showBeside } from '../../quantity/sum.ts';
import type { CitedPercent } from '../../reference/thresholds.ts';
import type { Because } from '../classification.ts';
import { type ClassResult, type Context, citeHealth, type plainHazard } from '../context.ts';
import type { PhFinding } from '../extreme-ph.ts';
import { type Ingredient, lowestBound } from '../ingredient.ts';
import type { ReadingId } from '../readings.ts';
import { reason, retold } from '../reasons.ts';
import { becauseOfOne, type SumTerm } from '../sums.ts';

/** The ingredients that concern skin or eye, in the groups that the law judges apart. */
export interface Sorted {
  /** Summed. */
  readonly additive: readonly Ingredient[];
  /** Judged alone: summing does not hold for them. */
  readonly alone: readonly Ingredient[];
  /** Below the cut-off for relevant ingredients. */
  readonly below: readonly Ingredient[];
}

/**
 * Relevant ingredients in two groups, summed and judged alone, and those left out: A.2.3.3.1, A.3.3.3.1; CLP 3.2.3.3.1,
 * 3.3.3.3.1 with 1.1.2.2.2, by which a lower specific limit lowers the cut-off.
 * @param limitsOf specific limits that count for an ingredient.
 * @param isClassified whether an ingredient has a hazard that counts.
 */
export function sortIngredients(
  ingredients: readonly Ingredient[],
  { percent: generic }: CitedPercent,
  limitsOf: (ingredient: Ingredient) => readonly SpecificLimit[],
  isClassified: (ingredient: Ingredient) => boolean,
  used: Set<ReadingId>,
): Sorted {
  const additive: Ingredient[] = [];
  const alone: Ingredient[] = [];
  const below: Ingredient[] = [];
  for (const ingredient of ingredients) {
    const limits = limitsOf(ingredient);
    if (limits.length === 0 && !isClassified(ingredient)) continue;
    const lowest = lowestBound(limits);
    const floor = lowest && lowest.value < generic ? lowest.value : generic;
    if (!ingredient.additive) alone.push(ingredient);
    else if (ingredient.relevant || reaches(ingredient.percent, floor)) additive.push(ingredient);
    else below.push(ingredient);
  }
  if (alone.length > 0) used.add('not-additive');
  if (below.length > 0) used.add('below-cut-off');
  return { additive, alone, below };
}

/**
 * The results of a class for skin or eye. What the cut-off left out, and what set an extreme pH aside, stands behind
 * every working; the warnings on that only where Category 1 is not given.
 */
export function resultsOf(
  name: string,
  cutOff: CitedPercent,
  { below }: Sorted,
  { setAside, warnings }: PhFinding,
  used: ReadonlySet<ReadingId>,
): {
  readonly given: (hazard: ReturnType<typeof plainHazard>, because: Because) => ClassResult;
  readonly notGiven: (because: Because) => ClassResult;
} {
  const floor = cutOff.percent;
  const told = (because: Because): Because =>
    reason(() => {
      const more = leftOut(below, cutOff) + setAside;
      return more === '' ? because : retold(because, because.working + more);
    });
  return {
    given: (hazard, because) => ({
      class: name,
      outcome: 'classified',
      hazard,
      because: told(because),
      readings: [...used],
      warnings: hazard.category.startsWith('1') ? [] : warnings,
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

/** What was left out of a sum, to stand behind its working. */
function leftOut(below: readonly Ingredient[], { percent: floor }: CitedPercent): string {
  if (below.length === 0) return '';
  const present = below.filter(({ percent }) => percent.value > 0);
  if (present.length === 0) return '';
  const each = present.map(({ percent, name }) => `${showBeside(percent.value, floor)} % ${name}`);
  return `; not relevant below ${show(floor)} %: ${each.join(', ')}`;
}

/** Notes the readings on which a sum with specific limits rests. */
export const noteLimits = (terms: readonly SumTerm[], used: Set<ReadingId>): void => {
  if (terms.some(({ specific }) => specific)) used.add('limit-ratio').add('limit-upper-end');
};

/**
 * The first ingredient judged alone that reaches its limit (Tables A.2.4, A.3.4; CLP and UN Tables 3.2.4, 3.3.4).
 * @param limitOf percent from which an ingredient decides, and whether that is a specific limit; null where it cannot.
 */
export function firstAtLimit(
  { basis }: Context,
  alone: readonly Ingredient[],
  limitOf: (ingredient: Ingredient) => { readonly percent: number; readonly specific: boolean } | null,
  what: string,
  paragraph: string,
  used: Set<ReadingId>,
): Because | null {
  for (const ingredient of alone) {
    const limit = limitOf(ingredient);
    if (!limit) continue;
    if (limit.specific) used.add('not-additive-limit');
    if (!reaches(ingredient.percent, limit.percent)) continue;
    const cite = citeHealth(basis, paragraph);
    return becauseOfOne(
      ingredient,
      limit.percent,
      true,
      `${what} for which summing does not hold`,
      limit.specific ? `${cite}; ${basis.specificLimits.cite}` : cite,
    );
  }
  return null;
}
