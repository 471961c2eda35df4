import type { Exact } from '../../quantity/exact.ts';
import { reaches, show } from '../../quantity/sum.ts';
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

const CLASS = 'Eye Dam./Irrit.';

/** Skin corrosion and serious eye damage both count; an ingredient with both counts once (Table A.3.3, Note a). */
const isDamaging = (ingredient: Ingredient): boolean =>
  hazardsOf(ingredient, 'Eye Dam.').length > 0 || hazardsOf(ingredient, 'Skin Corr.').length > 0;

const irritantCategories = (ingredient: Ingredient): readonly string[] =>
  hazardsOf(ingredient, 'Eye Irrit.').map(({ category }) => category);

const eyeLimits = ({ applyLimits }: Context, ingredient: Ingredient) => {
  if (!applyLimits) return { damage: [], irritation: [] };
  return { damage: limitsOf(ingredient, 'Eye Dam.'), irritation: limitsOf(ingredient, 'Eye Irrit.') };
};

/**
 * Serious eye damage and eye irritation of an untested mixture: A.3.3.1.2 (pH), A.3.3.3.3 with Table A.3.3 (sums),
 * A.3.3.3.4 with Table A.3.4 (ingredients for which summing does not hold); CLP and UN 3.3.3.
 */
export function eye(context: Context, skinCorrosive: boolean): readonly ClassResult[] {
  const { basis, mixture } = context;
  const concerned = skinCorrosive || concerns(mixture, 'Skin Corr.', 'Eye Dam.', 'Eye Irrit.');
  if (concerned || mixture.properties.pH) return judge(context, skinCorrosive);
  return constant(basis, CLASS, () => judge(context, false));
}

function judge(context: Context, skinCorrosive: boolean): ClassResult[] {
  const { basis } = context;
  const rules = basis.eye;
  const used = new Set<ReadingId>();
  const { additive, alone } = sortIngredients(context, used);
  const floor = rules.relevantFrom.percent;
  const damage = (because: Because): ClassResult[] => [
    {
      class: CLASS,
      outcome: 'classified',
      hazard: plainHazard('Eye Dam.', '1', ['H318']),
      because,
      readings: [...used],
      floor,
    },
  ];

  const damaging = additive
    .map(ingredient => damageTerm(context, ingredient, used))
    .filter(term => term !== null);
  const damageSum = becauseOfSum(
    damaging,
    rules.damage.percent,
    'sum of skin-corrosive and eye-damaging ingredients',
    citeHealth(basis, rules.damage.cite),
    basis.specificLimits.cite,
  );
  if (reachesLimit(damaging, rules.damage.percent)) {
    noteLimits(damaging, used);
    return damage(damageSum);
  }
  const byPh = extremePh(context, basis, rules.extremePh, 'Eye Dam.', used);
  if (byPh) return damage(byPh);
  const damagingAlone = byOne(context, alone, 'damage', used);
  if (damagingAlone) return damage(damagingAlone);
  if (skinCorrosive) {
    used.add('corrosive-implies-eye');
    return damage(
      becauseOfNone(
        'corrosive to skin',
        citeHealth(basis, rules.fromSkin.cite),
        'the mixture is classified Skin Corr. 1, so serious eye damage is concluded',
      ),
    );
  }

  const terms = additive.map(ingredient => irritantTerm(context, ingredient)).filter(term => term !== null);
  noteLimits(terms, used);
  const sum = becauseOfSum(
    terms,
    rules.irritant.percent,
    'sum of eye-damaging and eye-irritating ingredients',
    citeHealth(basis, rules.irritant.cite),
    basis.specificLimits.cite,
  );
  const irritation = (because: Because): ClassResult[] => {
    const category = irritantResult(context, [...additive, ...alone], used);
    const statement = category === rules.mildIrritant?.category ? 'H320' : 'H319';
    const hazard = plainHazard('Eye Irrit.', category, [statement]);
    return [{ class: CLASS, outcome: 'classified', hazard, because, readings: [...used], floor }];
  };
  if (reachesLimit(terms, rules.irritant.percent)) return irritation(sum);
  const irritantAlone = byOne(context, alone, 'irritant', used);
  if (irritantAlone) return irritation(irritantAlone);

  const because =
    terms.length > 0
      ? sum
      : becauseOfNone(
          'no relevant ingredient',
          citeHealth(basis, rules.relevantFrom.cite),
          `no ingredient damaging or irritating to the eye at ${show(floor)} % or more`,
        );
  return [{ class: CLASS, outcome: 'not-classified', because, readings: [...used], floor }];
}

const noteLimits = (terms: readonly SumTerm[], used: Set<ReadingId>): void => {
  if (terms.some(({ specific }) => specific)) used.add('limit-ratio').add('limit-upper-end');
};

/** Relevant ingredients (A.3.3.3.1; CLP 3.3.3.3.1 with 1.1.2.2.2) in two groups: summed, and judged alone. */
function sortIngredients(
  context: Context,
  used: Set<ReadingId>,
): { additive: Ingredient[]; alone: Ingredient[] } {
  const additive: Ingredient[] = [];
  const alone: Ingredient[] = [];
  const generic = context.basis.eye.relevantFrom.percent;
  for (const ingredient of context.mixture.ingredients) {
    const { damage, irritation } = eyeLimits(context, ingredient);
    const limits = [...damage, ...irritation];
    if (limits.length === 0 && !isDamaging(ingredient) && irritantCategories(ingredient).length === 0)
      continue;
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

/** The specific limit for damage, else the upper end of a range for irritation alone (reading `eye-from-irritant-range`). */
function ownDamageLimit(context: Context, ingredient: Ingredient, used: Set<ReadingId>): Exact | null {
  const { damage, irritation } = eyeLimits(context, ingredient);
  const own = lowestBound(damage);
  if (own || !isDamaging(ingredient)) return own;
  const upper = irritation.find(({ high }) => high !== null)?.high ?? null;
  if (upper) used.add('eye-from-irritant-range');
  return upper;
}

/** What an ingredient adds towards Category 1: its specific limit, else the table's 3 %. */
function damageTerm(context: Context, ingredient: Ingredient, used: Set<ReadingId>): SumTerm | null {
  const own = ownDamageLimit(context, ingredient, used);
  if (own) return specificTerm(ingredient, own);
  return isDamaging(ingredient) ? genericTerm(ingredient, context.basis.eye.damage.percent) : null;
}

/** What an ingredient adds towards Category 2: its specific limit, else 10 x for damaging and 1 x for irritating ones. */
function irritantTerm(context: Context, ingredient: Ingredient): SumTerm | null {
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
  return irritantCategories(ingredient).length > 0 ? genericTerm(ingredient, irritant.percent) : null;
}

/** 2B when every relevant ingredient that is classified for the eye is 2B (Table A.3.3, Note b). */
function irritantResult({ basis }: Context, classified: readonly Ingredient[], used: Set<ReadingId>): string {
  const { mildIrritant, irritantCategory, relevantFrom } = basis.eye;
  if (!mildIrritant) return irritantCategory;
  used.add('eye-2b');
  const allMild = classified.every(
    ingredient =>
      !(ingredient.relevant || reaches(ingredient.percent, relevantFrom.percent)) ||
      (!isDamaging(ingredient) &&
        irritantCategories(ingredient).every(category => category === mildIrritant.category)),
  );
  return allMild ? mildIrritant.category : irritantCategory;
}

/** Table A.3.4; CLP Table 3.3.4: ingredients judged alone; a specific limit replaces the table's figure. */
function byOne(
  context: Context,
  alone: readonly Ingredient[],
  kind: 'damage' | 'irritant',
  used: Set<ReadingId>,
): Because | null {
  const { basis } = context;
  for (const ingredient of alone) {
    const { damage, irritation } = eyeLimits(context, ingredient);
    const low = kind === 'damage' ? ownDamageLimit(context, ingredient, used) : lowestBound(irritation);
    const damaging = isDamaging(ingredient) || damage.length > 0;
    const concerned =
      low !== null || damaging || (kind === 'irritant' && irritantCategories(ingredient).length > 0);
    // Below a limit of its own for damage an ingredient still irritates from the table's figure, as in the sums.
    const limit = low?.value ?? basis.eye.notAdditive[damaging ? 'damage' : 'irritant'];
    if (concerned && reaches(ingredient.percent, limit))
      return becauseOfOne(
        ingredient,
        limit,
        true,
        kind === 'damage'
          ? 'damaging ingredient for which summing does not hold'
          : 'irritant ingredient for which summing does not hold',
        citeHealth(basis, basis.eye.notAdditive.cite),
      );
  }
  return null;
}
