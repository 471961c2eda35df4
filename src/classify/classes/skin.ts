import { meets, reaches, show } from '../../quantity/sum.ts';
import type { Because } from '../classification.ts';
import { constant } from '../constant.ts';
import { type ClassResult, type Context, citeHealth, plainHazard } from '../context.ts';
import { extremePh } from '../extreme-ph.ts';
import { concerns, hazardsOf, type Ingredient, limitsOf, lowestBound } from '../ingredient.ts';
import type { ReadingId } from '../readings.ts';
import {
  becauseOfNone,
  becauseOfOne,
  becauseOfSum,
  genericTerm,
  reachesLimit,
  type SumTerm,
  specificTerm,
} from '../sums.ts';

const CLASS = 'Skin Corr./Irrit.';
const levels = ['1A', '1B', '1C', '1'] as const;
type Level = (typeof levels)[number];

const rank = (level: string): number => levels.indexOf(level as Level);

/** The most severe corrosive category of an ingredient, or null. */
export function corrosiveCategory(ingredient: Ingredient): Level | null {
  let worst: Level | null = null;
  for (const { category } of hazardsOf(ingredient, 'Skin Corr.'))
    if (!worst || rank(category) < rank(worst)) worst = category as Level;
  return worst;
}

const isIrritant = (ingredient: Ingredient, category = '2'): boolean =>
  hazardsOf(ingredient, 'Skin Irrit.').some(hazard => hazard.category === category);

const corrosionLimits = ({ applyLimits }: Context, ingredient: Ingredient) =>
  applyLimits ? limitsOf(ingredient, 'Skin Corr.') : [];
const irritationLimits = ({ applyLimits }: Context, ingredient: Ingredient) =>
  applyLimits ? limitsOf(ingredient, 'Skin Irrit.') : [];

/**
 * Skin corrosion and irritation of an untested mixture: A.2.3.1.3 (pH), A.2.3.3.3 with Table A.2.3 (sums),
 * A.2.3.3.4 with Table A.2.4 (ingredients for which summing does not hold); CLP and UN 3.2.3.
 */
export function skin(context: Context): readonly ClassResult[] {
  const { basis, mixture } = context;
  if (concerns(mixture, 'Skin Corr.', 'Skin Irrit.') || mixture.properties.pH) return judge(context);
  return constant(basis, CLASS, () => judge(context));
}

function judge(context: Context): ClassResult[] {
  const { basis } = context;
  const rules = basis.skin;
  const used = new Set<ReadingId>();
  const { additive, alone } = sortIngredients(context, used);
  const floor = rules.relevantFrom.percent;
  const given = (category: string, because: Because): ClassResult[] => {
    if (category.length > 1) used.add('show-sub-category');
    const shown = category.length > 1 && context.take('show-sub-category') === 'hide' ? '1' : category;
    const hazard =
      shown === '2'
        ? plainHazard('Skin Irrit.', '2', ['H315'])
        : shown === '3'
          ? plainHazard('Skin Irrit.', '3', ['H316'])
          : plainHazard('Skin Corr.', shown, ['H314']);
    return [{ class: CLASS, outcome: 'classified', hazard, because, readings: [...used], floor }];
  };

  const bySum = corrosiveBySum(context, additive, alone, used);
  const byPh = extremePh(context, basis, rules.extremePh, 'Skin Corr.', used);
  if (byPh) {
    if (!bySum) return given('1', byPh);
    return given(bySum.category, {
      ...byPh,
      working: `${byPh.working}; ${bySum.category === '1' ? 'the same' : 'sub-category'} from the sum: ${bySum.because.working}`,
    });
  }
  if (bySum) return given(bySum.category, bySum.because);
  const corrosiveAlone = byOne(context, alone, 'corrosive');
  if (corrosiveAlone) return given('1', corrosiveAlone);

  const terms = additive.map(ingredient => irritantTerm(context, ingredient)).filter(term => term !== null);
  const sum = becauseOfSum(
    terms,
    rules.irritant.percent,
    'sum of corrosive and irritant ingredients',
    citeHealth(basis, rules.irritant.cite),
    basis.specificLimits.cite,
  );
  noteLimits(terms, used);
  if (reachesLimit(terms, rules.irritant.percent)) return given('2', sum);
  const irritantAlone = byOne(context, alone, 'irritant');
  if (irritantAlone) return given('2', irritantAlone);
  const mild = mildBySum(context, additive);
  if (mild) return given('3', mild);

  const because =
    terms.length > 0
      ? sum
      : becauseOfNone(
          'no relevant ingredient',
          citeHealth(basis, rules.relevantFrom.cite),
          `no ingredient corrosive or irritating to skin at ${show(floor)} % or more`,
        );
  return [{ class: CLASS, outcome: 'not-classified', because, readings: [...used], floor }];
}

const noteLimits = (terms: readonly SumTerm[], used: Set<ReadingId>): void => {
  if (terms.some(({ specific }) => specific)) used.add('limit-ratio').add('limit-upper-end');
};

/** Relevant ingredients (A.2.3.3.1; CLP 3.2.3.3.1 with 1.1.2.2.2) in two groups: summed, and judged alone. */
function sortIngredients(
  context: Context,
  used: Set<ReadingId>,
): { additive: Ingredient[]; alone: Ingredient[] } {
  const additive: Ingredient[] = [];
  const alone: Ingredient[] = [];
  const generic = context.basis.skin.relevantFrom.percent;
  for (const ingredient of context.mixture.ingredients) {
    const limits = [...corrosionLimits(context, ingredient), ...irritationLimits(context, ingredient)];
    const concerned =
      limits.length > 0 ||
      hazardsOf(ingredient, 'Skin Corr.').length > 0 ||
      hazardsOf(ingredient, 'Skin Irrit.').length > 0;
    if (!concerned) continue;
    const lowest = lowestBound(limits);
    const floor = lowest && lowest.value < generic ? lowest.value : generic;
    if (!ingredient.additive) {
      used.add('not-additive');
      alone.push(ingredient);
    } else if (ingredient.relevant || reaches(ingredient.percent, floor)) additive.push(ingredient);
    else used.add('below-cut-off');
  }
  return { additive, alone };
}

/** Table A.2.3, Category 1 with its Note on sub-categories; CLP and UN Table 3.2.3. */
function corrosiveBySum(
  context: Context,
  additive: readonly Ingredient[],
  alone: readonly Ingredient[],
  used: Set<ReadingId>,
): { category: string; because: Because } | null {
  const { basis } = context;
  const { percent } = basis.skin.corrosive;
  const at = (level: Level) =>
    additive.map(ingredient => corrosiveTerm(context, ingredient, level)).filter(term => term !== null);
  const outcome = (category: Level, terms: readonly SumTerm[]) => {
    noteLimits(terms, used);
    if (terms.some(({ specific }) => specific)) used.add('limit-sub-category');
    return {
      category,
      because: becauseOfSum(
        terms,
        percent,
        category === '1' ? 'sum of corrosive ingredients' : `sum of corrosive ingredients to ${category}`,
        citeHealth(basis, basis.skin.subCategories.cite),
        basis.specificLimits.cite,
      ),
    };
  };
  const all = at('1');
  if (!reachesLimit(all, percent)) return null;
  const relevant = alone.filter(
    ({ relevant, percent: own }) => relevant || reaches(own, basis.skin.relevantFrom.percent),
  );
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
    if (reachesLimit(terms, percent)) return outcome(level, terms);
  }
  return outcome('1', all);
}

/** What an ingredient adds towards Category 1 at a level: its specific limit of that or a worse level, else the table's 5 %. */
function corrosiveTerm(context: Context, ingredient: Ingredient, level: Level): SumTerm | null {
  const limits = corrosionLimits(context, ingredient);
  if (limits.length > 0) {
    const low = lowestBound(limits.filter(({ category }) => rank(category) <= rank(level)));
    return low && specificTerm(ingredient, low);
  }
  const category = corrosiveCategory(ingredient);
  if (!category || rank(category) > rank(level)) return null;
  return genericTerm(ingredient, context.basis.skin.corrosive.percent);
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
): Because | null {
  const { basis } = context;
  for (const ingredient of alone) {
    const limits =
      kind === 'corrosive' ? corrosionLimits(context, ingredient) : irritationLimits(context, ingredient);
    const low = lowestBound(limits);
    const corrosive =
      corrosiveCategory(ingredient) !== null || corrosionLimits(context, ingredient).length > 0;
    const concerned =
      low !== null || (kind === 'corrosive' ? corrosive : corrosive || isIrritant(ingredient));
    // Below a corrosion limit of its own a corrosive still irritates from the table's figure, as in the sums.
    const limit = low?.value ?? basis.skin.notAdditive[corrosive ? 'corrosive' : 'irritant'];
    if (concerned && reaches(ingredient.percent, limit))
      return becauseOfOne(
        ingredient,
        limit,
        true,
        `${kind} ingredient for which summing does not hold`,
        citeHealth(basis, basis.skin.notAdditive.cite),
      );
  }
  return null;
}

/** Category 3 of UN GHS Table 3.2.3, where the building block is on. */
function mildBySum({ basis }: Context, additive: readonly Ingredient[]): Because | null {
  const { mild, corrosiveWeight, relevantFrom } = basis.skin;
  if (!mild) return null;
  const weightOf = (ingredient: Ingredient) => (corrosiveCategory(ingredient) ? corrosiveWeight.factor : 1);
  const severe = additive.filter(ingredient => corrosiveCategory(ingredient) || isIrritant(ingredient));
  const part = (ingredient: Ingredient) => ({ amount: ingredient.percent, weight: weightOf(ingredient) });
  const bySevere = severe.length > 0 && meets(severe.map(part), relevantFrom.percent);
  const terms = (bySevere ? severe : additive).map(ingredient =>
    genericTerm(ingredient, mild.percent, weightOf(ingredient)),
  );
  const limit = bySevere ? relevantFrom.percent : mild.percent;
  if (!reachesLimit(terms, limit)) return null;
  return becauseOfSum(
    terms,
    limit,
    'sum of irritant ingredients to Category 3',
    citeHealth(basis, mild.cite),
    '',
  );
}
