import { dilutionObjectives } from './bridging.ts';
import type { ClassRule, Found } from './class-rule.ts';
import { classRules } from './class-rules.ts';
import type { ClassResult, Context, RouteEstimate } from './context.ts';
import { applyEvidence, classOf } from './evidence.ts';
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

const everyPlace = classRules.map((_, place) => place);
const limitedPlaces = everyPlace.filter(place => classRules[place]!.limitedBy.length > 0);

/** Rules whose result specific limits of some hazard classes can change. */
const placesLimitedBy = (hazardClasses: ReadonlySet<string>): readonly number[] =>
  limitedPlaces.filter(place => classRules[place]!.limitedBy.some(each => hazardClasses.has(each)));

/**
 * The classes of a mixture in the order of the law, evidence applied, each at the compositions that matter to it.
 * @param limited where given, those alone that specific concentration limits of these hazard classes can change.
 */
export function classesOf(spread: Spread, choose: Choose, limited?: ReadonlySet<string>): Classes {
  const results: ClassResult[] = [];
  const estimates: RouteEstimate[] = [];
  const [first] = spread.each as readonly [Context, ...Context[]];
  const tested = new Set(first.mixture.evidence.map(classOf));
  const lacking = lackingIn(spread.each);
  // By place in the list of rules: asked for every class of every product.
  const known: (readonly ClassResult[] | undefined)[] = classRules.map(() => undefined);
  const found: Found = rule => foundAt(classRules.indexOf(rule));
  const foundAt = (place: number): readonly ClassResult[] => {
    const earlier = known[place];
    if (earlier) return earlier;
    const rule = classRules[place]!;
    let given = judged(rule, spread, choose, found, estimates);
    if (lacking) given = undecided(given, rule, lacking);
    if (tested.size > 0 && given.some(result => tested.has(result.class)))
      given = applyEvidence(first, given, spread.at(dilutionObjectives));
    known[place] = given;
    return given;
  };
  for (const place of limited ? placesLimitedBy(limited) : everyPlace) results.push(...foundAt(place));
  return { results, estimates };
}

/** What a rule comes to at each composition that matters to it, and of those what is chosen. */
function judged(
  rule: ClassRule,
  spread: Spread,
  choose: Choose,
  found: Found,
  estimates: RouteEstimate[],
): readonly ClassResult[] {
  // Ingredient by ingredient every end counts by itself; only sums need a composition of 100 %.
  const contexts = rule.objectives ? spread.at(rule.objectives) : spread.each;
  const compositions: (readonly ClassResult[])[] = [];
  for (const context of contexts) {
    const results = rule.judge(context, found);
    for (const { estimates: sums } of results) if (sums) estimates.push(...sums);
    compositions.push(results);
  }
  return compositions.length === 1 ? compositions[0]! : choose(compositions);
}

/** Places of the ingredients without data that are present at a percent, whatever the class or for one endpoint. */
type Lacking = (floor: number, unknownAs: ClassRule['unknownAs']) => readonly number[];

/** Null where there is no ingredient without data. */
function lackingIn(contexts: readonly Context[]): Lacking | null {
  const isBlind = ({ data }: Ingredient): boolean => data.noData || data.unknown.size > 0;
  if (!contexts[0]!.mixture.ingredients.some(isBlind)) return null;
  const known = new Map<ClassRule['unknownAs'], Map<number, readonly number[]>>();
  return (floor, unknownAs) => {
    let at = known.get(unknownAs);
    if (!at) {
      at = new Map();
      known.set(unknownAs, at);
    }
    const earlier = at.get(floor);
    if (earlier) return earlier;
    const lacking = new Set<number>();
    for (const { mixture, scale } of contexts)
      for (const { index, percent, data } of mixture.ingredients)
        if (data.noData || (unknownAs !== undefined && data.unknown.has(unknownAs)))
          if (scale.reaches(percent, floor)) lacking.add(index);
    const places = [...lacking];
    at.set(floor, places);
    return places;
  };
}

/** A class that nothing gives is undecided while an ingredient without any data is present at its cut-off. */
function undecided(
  results: readonly ClassResult[],
  { unknownAs }: ClassRule,
  lackingAt: Lacking,
): readonly ClassResult[] {
  let changed: ClassResult[] | null = null;
  for (let i = 0; i < results.length; i++) {
    const result = results[i]!;
    const { outcome, floor } = result;
    if (outcome !== 'not-classified' || floor === undefined) continue;
    const lacking = lackingAt(floor, unknownAs);
    if (lacking.length === 0) continue;
    changed ??= [...results];
    changed[i] = withoutData(result, lacking);
  }
  return changed ?? results;
}

const withoutData = (
  { class: name, route, because, readings, warnings, floor, estimates }: ClassResult,
  lacking: readonly number[],
): ClassResult => ({
  class: name,
  route,
  outcome: 'insufficient-data',
  // In this order the engine copies fast.
  because: { lacking, ...because },
  readings,
  warnings,
  floor,
  estimates,
});
