import { dilutionObjectives } from './bridging.ts';
import type { ClassRule, Found } from './class-rule.ts';
import { classRules } from './class-rules.ts';
import type { ClassResult, Context, RouteEstimate } from './context.ts';
import { applyEvidence } from './evidence.ts';
import type { Ingredient } from './ingredient.ts';
import type { Spread } from './ranges/spread.ts';

/** The classes of a mixture. */
export interface Classes {
  readonly results: readonly ClassResult[];
  /** The sums of acute toxicity at each composition that was looked at. */
  readonly estimates: readonly RouteEstimate[];
}

/** Chooses one of the results that a class has at several compositions. */
export type Choose = (compositions: readonly (readonly ClassResult[])[]) => readonly ClassResult[];

/**
 * The classes of a mixture in the order of the law, evidence applied, each at the compositions that matter to it.
 * @param limited where given, those alone that specific concentration limits of these hazard classes can change.
 */
export function classesOf(spread: Spread, choose: Choose, limited?: ReadonlySet<string>): Classes {
  const estimates: RouteEstimate[] = [];
  const diluted = spread.at(dilutionObjectives);
  const known = new Map<ClassRule, readonly ClassResult[]>();
  const found: Found = rule => {
    const earlier = known.get(rule);
    if (earlier) return earlier;
    const compositions = compositionsFor(rule, spread).map(context => rule.judge(context, found));
    for (const results of compositions)
      for (const { estimates: sums } of results) if (sums) estimates.push(...sums);
    const calculated = compositions.length === 1 ? compositions[0]! : choose(compositions);
    const decided = undecidedByMissingData(spread.each, rule, calculated);
    const results = applyEvidence(spread.each[0]!, decided, diluted);
    known.set(rule, results);
    return results;
  };
  const asked = limited
    ? classRules.filter(({ limitedBy }) => limitedBy.some(each => limited.has(each)))
    : classRules;
  return { results: asked.flatMap(found), estimates };
}

// Ingredient by ingredient every end counts by itself; only sums need a composition of 100 %.
function compositionsFor({ objectives }: ClassRule, spread: Spread): readonly Context[] {
  if (!objectives) return spread.each;
  return spread.at(objectives);
}

/** A class that nothing gives is undecided while an ingredient without any data is present at its cut-off. */
function undecidedByMissingData(
  contexts: readonly Context[],
  { unknownAs }: ClassRule,
  results: readonly ClassResult[],
): readonly ClassResult[] {
  const isBlind = ({ data }: Ingredient): boolean =>
    data.noData || (unknownAs !== undefined && data.unknown.has(unknownAs));
  if (!contexts[0]!.mixture.ingredients.some(isBlind)) return results;
  return results.map(result => {
    const { floor } = result;
    if (result.outcome !== 'not-classified' || floor === undefined) return result;
    const lacking = new Set<number>();
    for (const { mixture, scale } of contexts)
      for (const { index, percent } of mixture.ingredients.filter(isBlind))
        if (scale.reaches(percent, floor)) lacking.add(index);
    return lacking.size === 0 ? result : withoutData(result, [...lacking]);
  });
}

const withoutData = (
  { class: name, route, because, readings, warnings, floor, estimates }: ClassResult,
  lacking: readonly number[],
): ClassResult => ({
  class: name,
  route,
  outcome: 'insufficient-data',
  because: { ...because, lacking },
  readings,
  warnings,
  floor,
  estimates,
});
