import type { Scale } from '../../quantity/scale.ts';
import type { AquaticRules } from '../../reference/thresholds.ts';
import type { ClassRule } from '../class-rule.ts';
import { constant } from '../constant.ts';
import { type ClassResult, type Context, hazardIn } from '../context.ts';
import { figureOf } from '../facts/figure.ts';
import { ofHealth } from '../facts/provision.ts';
import { hazardsOf, type Ingredient } from '../ingredient.ts';
import { type Objective, objective, objectives } from '../ranges/objective.ts';
import type { ReadingId } from '../readings.ts';
import { becauseOfSum, genericTerm, reachesLimit, type SumTerm } from '../sums.ts';

const ACUTE = 'Aquatic Acute';
const CHRONIC = 'Aquatic Chronic';

const categoryIn = (ingredient: Ingredient, hazardClass: string): string | null => {
  let worst: string | null = null;
  for (const { category } of hazardsOf(ingredient, hazardClass))
    if (!worst || category < worst) worst = category;
  return worst;
};

/** Relevant from 0.1 % (0.1/M) for Acute 1 and Chronic 1, from 1 % for the rest (CLP and UN 4.1.3.1). */
function isRelevant(
  scale: Scale,
  ingredient: Ingredient,
  category: string,
  m: number,
  { relevantFrom }: AquaticRules,
): boolean {
  if (ingredient.relevant) return true;
  return scale.reaches(
    ingredient.percent,
    category === '1' ? relevantFrom.category1 / m : relevantFrom.other,
  );
}

const factorOf = ({ data }: Ingredient, hazardClass: string): number =>
  hazardClass === ACUTE ? data.mFactors.acute : data.mFactors.chronic;

/** What an ingredient weighs towards a category: its M-factor, ten times for each step to a milder one; Chronic 4 is a plain sum. */
function weightOf(ingredient: Ingredient, own: string, hazardClass: string, category: string): number {
  if (hazardClass === CHRONIC && category === '4') return 1;
  return (own === '1' ? factorOf(ingredient, hazardClass) : 1) * 10 ** (Number(category) - Number(own));
}

/** Which way the summation to each category gets worse. */
export function aquaticObjectives({ mixture, basis }: Context): readonly Objective[] {
  if (!basis.aquatic) return [];
  const { acute, chronic } = basis.aquatic;
  const towards = (hazardClass: string) => (category: string) =>
    objective(mixture, ingredient => {
      const own = categoryIn(ingredient, hazardClass);
      return own && own <= category ? weightOf(ingredient, own, hazardClass, category) : 0;
    });
  const unknown = objective(mixture, ({ data }) => (data.unknown.has('aquatic') ? 1 : 0));
  return objectives(
    ...acute.categories.map(towards(ACUTE)),
    ...chronic.categories.map(towards(CHRONIC)),
    unknown,
  );
}

const aquatic = (name: string, half: 'acute' | 'chronic'): ClassRule => ({
  listed: name,
  isOf: ({ aquatic: rules }) => rules !== null,
  judge: context => {
    const rules = context.basis.aquatic;
    if (!rules) return [];
    const sum = () => [summation(context, rules, name, rules[half])];
    return context.mixture.classes.has(name) ? sum() : constant(context.basis, name, sum);
  },
  objectives: aquaticObjectives,
  limitedBy: [],
  cutOff: ({ aquatic: rules }, category) =>
    rules?.relevantFrom[category === '1' ? 'category1' : 'other'] ?? null,
  unknownAs: 'aquatic',
});

/**
 * Hazards to the aquatic environment by summation: CLP and UN 4.1.3.5.5.3 (acute), 4.1.3.5.5.4 (chronic),
 * with M-factors 4.1.3.5.5.5. A step to a milder category weighs ten times; Chronic 4 is a plain sum.
 */
export const aquaticAcute = aquatic(ACUTE, 'acute');
/** Long-term hazard, as above. */
export const aquaticChronic = aquatic(CHRONIC, 'chronic');

function summation(
  context: Context,
  rules: AquaticRules,
  hazardClass: string,
  { categories, cite }: AquaticRules['acute'],
): ClassResult {
  const { basis, mixture, scale } = context;
  const used = new Set<ReadingId>();
  const relevant: { ingredient: Ingredient; own: string }[] = [];
  for (const ingredient of mixture.ingredients) {
    const own = categoryIn(ingredient, hazardClass);
    if (!own) continue;
    if (own === '1' && !ingredient.data.mFactors.given.has(hazardClass === ACUTE ? 'acute' : 'chronic'))
      used.add('m-factor-missing');
    if (isRelevant(scale, ingredient, own, factorOf(ingredient, hazardClass), rules))
      relevant.push({ ingredient, own });
    else used.add('below-cut-off');
  }
  const floor = rules.relevantFrom.category1;
  let nearest: ClassResult | null = null;
  for (const category of categories) {
    const terms: SumTerm[] = [];
    for (const { ingredient, own } of relevant)
      if (own <= category)
        terms.push(genericTerm(ingredient, rules.sum, weightOf(ingredient, own, hazardClass, category)));
    if (terms.length === 0) continue;
    const reached = reachesLimit(scale, terms, rules.sum);
    const of = { rule: 'aquatic', limit: rules.sum, reached, cite: ofHealth(basis, cite), category } as const;
    const because = becauseOfSum(terms, of);
    if (reached) {
      const hazard = hazardIn(hazardClass, category);
      return { class: hazardClass, outcome: 'classified', hazard, because, readings: [...used], floor };
    }
    // The category that comes nearest.
    if (!nearest || figureOf(because)!.total > figureOf(nearest.because)!.total)
      nearest = { class: hazardClass, outcome: 'not-classified', because, readings: [...used], floor };
  }
  return (
    nearest ?? {
      class: hazardClass,
      outcome: 'not-classified',
      because: {
        kind: 'none',
        rule: 'aquatic',
        from: [rules.relevantFrom.category1, rules.relevantFrom.other],
        cites: [ofHealth(basis, rules.relevantFrom.cite)],
      },
      readings: [...used],
      floor,
    }
  );
}
