import { always, type ClassRule } from '../class-rule.ts';
import { constant } from '../constant.ts';
import { type ClassResult, type Context, hazardIn } from '../context.ts';
import { extremePh, type PhFinding } from '../extreme-ph.ts';
import type { Because } from '../facts/because.ts';
import { ofHealth } from '../facts/provision.ts';
import { concerns, hazardsOf, type Ingredient, lowestBound } from '../ingredient.ts';
import { type Objective, objective, objectives, weightOfTerm } from '../ranges/objective.ts';
import type { ReadingId } from '../readings.ts';
import { judgedSevere } from '../strong.ts';
import { becauseOfSum, figure, reachesLimit, type SumTerm } from '../sums.ts';
import {
  damageTerm,
  eyeLimits,
  irritantCategories,
  irritantTerm,
  isDamaging,
  ownDamageLimit,
} from './_eye-terms.ts';
import {
  both,
  eachAlone,
  firstAtLimit,
  floorOf,
  isRelevant,
  noteLimits,
  resultsOf,
  type Sorted,
  sortIngredients,
  strongAlone,
  strongAtLimit,
} from './_skin-and-eye.ts';
import { skin } from './skin.ts';

const CLASS = 'Eye Dam./Irrit.';
const eyeClasses = ['Skin Corr.', 'Eye Dam.', 'Eye Irrit.'];

/**
 * Serious eye damage and eye irritation of an untested mixture: A.3.3.1.2 (pH), A.3.3.3.3 with Table A.3.3 (sums),
 * A.3.3.3.4 with Table A.3.4 (ingredients for which summing does not hold); CLP and UN 3.3.3. A mixture that is
 * corrosive to skin damages eyes too.
 */
export const eye: ClassRule = {
  listed: CLASS,
  isOf: always,
  judge: (context, found) => {
    const { basis, mixture } = context;
    const skinCorrosive = found(skin).some(isCorrosive);
    const concerned = skinCorrosive || concerns(mixture, eyeClasses);
    if (concerned || mixture.properties.pH || judgedSevere(context).length > 0)
      return [judge(context, skinCorrosive)];
    return constant(basis, CLASS, () => [judge(context, false)]);
  },
  objectives: eyeObjectives,
  limitedBy: ['Skin Corr.', 'Skin Irrit.', 'Eye Dam.', 'Eye Irrit.'],
  cutOff: figures => figures.eye.relevantFrom.percent,
};

const isCorrosive = (result: ClassResult): boolean =>
  result.outcome === 'classified' && result.hazard.hazardClass === 'Skin Corr.';

function judge(context: Context, skinCorrosive: boolean): ClassResult {
  const { basis, scale } = context;
  const rules = basis.eye;
  const used = new Set<ReadingId>();
  const sorted = sortIngredients(
    context,
    rules.relevantFrom,
    ingredient => {
      const { damage: ownDamage, irritation } = eyeLimits(context, ingredient);
      return both(ownDamage, irritation);
    },
    ingredient => isDamaging(ingredient) || hazardsOf(ingredient, 'Eye Irrit.').length > 0,
    used,
  );
  const ph = extremePh(context, rules.extremePh, 'eye', used);
  const { given, notGiven } = resultsOf(CLASS, rules.relevantFrom, sorted, ph, used);

  const damaging = damage(context, sorted, ph.because, skinCorrosive, used);
  if (damaging) {
    if (skinCorrosive) used.add('eye-damage-statement');
    return given(hazardIn('Eye Dam.', '1'), damaging);
  }

  const terms = sorted.additive
    .map(ingredient => irritantTerm(context, ingredient))
    .filter(term => term !== null);
  noteLimits(terms, used);
  const reached = reachesLimit(scale, terms, rules.irritant.percent);
  const sum = (): Because =>
    becauseOfSum(terms, {
      rule: 'damaging-and-irritating',
      limit: rules.irritant.percent,
      reached,
      cite: ofHealth(basis, rules.irritant.cite),
      limitsCite: ofHealth(basis, basis.specificLimits.cite),
    });
  const irritating = reached ? sum() : byOne(context, sorted.alone, 'irritant', used);
  if (irritating) {
    const category = irritantResult(context, [...sorted.additive, ...sorted.alone], used);
    return given(hazardIn('Eye Irrit.', category), irritating);
  }

  if (terms.length > 0) return notGiven(sum());
  const { percent, cite } = rules.relevantFrom;
  return notGiven({ kind: 'none', rule: 'eye', from: [percent], cites: [ofHealth(basis, cite)] });
}

/** Category 1 by the sum, by pH, by an ingredient judged alone, or because the mixture is corrosive to skin. */
function damage(
  context: Context,
  { additive, alone }: Sorted,
  byPh: PhFinding['because'],
  skinCorrosive: boolean,
  used: Set<ReadingId>,
): Because | null {
  const { basis, scale } = context;
  const rules = basis.eye;
  const terms = additive
    .map(ingredient => damageTerm(context, ingredient, used))
    .filter(term => term !== null);
  if (reachesLimit(scale, terms, rules.damage.percent)) {
    noteLimits(terms, used);
    return becauseOfSum(terms, {
      rule: 'corrosive-and-damaging',
      limit: rules.damage.percent,
      reached: true,
      cite: ofHealth(basis, rules.damage.cite),
      limitsCite: ofHealth(basis, basis.specificLimits.cite),
    });
  }
  if (byPh) return byPh;
  const byAlone =
    byOne(context, alone, 'damaging', used) ??
    strongAtLimit(
      context,
      rules.notAdditive.damage,
      rules.notAdditive.cite,
      ingredient => hasOwnLimit(context, ingredient),
      used,
    );
  if (byAlone || !skinCorrosive) return byAlone;
  used.add('corrosive-implies-eye');
  return { kind: 'concluded', from: 'Skin Corr. 1', cites: [ofHealth(basis, rules.fromSkin.cite)] };
}

// A range for irritation alone has an end from which damage is taken.
function hasOwnLimit(context: Context, ingredient: Ingredient): boolean {
  const { damage: ownDamage, irritation } = eyeLimits(context, ingredient);
  return ownDamage.length > 0 || irritation.length > 0;
}

/**
 * 2B when every relevant ingredient that is classified for the eye is 2B (Table A.3.3, Note b). One that counts by its
 * specific limit alone has no such category.
 */
function irritantResult(context: Context, classified: readonly Ingredient[], used: Set<ReadingId>): string {
  const { mildIrritant, irritantCategory, relevantFrom } = context.basis.eye;
  if (!mildIrritant) return irritantCategory;
  used.add('eye-2b');
  const isMild = (ingredient: Ingredient): boolean => {
    const categories = irritantCategories(ingredient);
    if (isDamaging(ingredient) || categories.length === 0) return false;
    return categories.every(category => category === mildIrritant.category);
  };
  const counts = (ingredient: Ingredient): boolean => {
    const { damage: ownDamage, irritation } = eyeLimits(context, ingredient);
    return isRelevant(context.scale, ingredient, floorOf(both(ownDamage, irritation), relevantFrom.percent));
  };
  const allMild = classified.every(ingredient => isMild(ingredient) || !counts(ingredient));
  return allMild ? mildIrritant.category : irritantCategory;
}

/** Which way each sum of the class gets worse, and each ingredient judged alone. */
function eyeObjectives(context: Context): readonly Objective[] {
  const { mixture, basis } = context;
  const ignored = new Set<ReadingId>();
  const byTerm = (termOf: (ingredient: Ingredient) => SumTerm | null): Objective | null =>
    objective(mixture, ingredient => (ingredient.additive ? weightOfTerm(termOf(ingredient)) : 0));
  const mild = basis.eye.mildIrritant?.category;
  const isUnsplit = (ingredient: Ingredient): boolean =>
    irritantCategories(ingredient).some(category => category !== mild);
  return objectives(
    byTerm(ingredient => damageTerm(context, ingredient, ignored)),
    byTerm(ingredient => irritantTerm(context, ingredient)),
    // One that is not 2B makes the mixture 2A where it is relevant.
    mild === undefined ? null : objective(mixture, each => (isUnsplit(each) ? 1 : 0)),
    ...eachAlone(mixture),
    ...strongAlone(context),
  );
}

/** Table A.3.4; CLP Table 3.3.4: ingredients judged alone; a specific limit replaces the table's figure. */
function byOne(
  context: Context,
  alone: readonly Ingredient[],
  kind: 'damaging' | 'irritant',
  used: Set<ReadingId>,
): Because | null {
  const { notAdditive } = context.basis.eye;
  const limitOf = (ingredient: Ingredient) => {
    const { damage: ownDamage, irritation } = eyeLimits(context, ingredient);
    const low = kind === 'damaging' ? ownDamageLimit(context, ingredient, used) : lowestBound(irritation);
    if (low) return { percent: low, specific: true };
    // Below a limit of its own for damage an ingredient still irritates from the table's figure, as in the sums.
    if (isDamaging(ingredient) || ownDamage.length > 0)
      return { percent: figure(notAdditive.damage), specific: false };
    const irritates = kind === 'irritant' && irritantCategories(ingredient).length > 0;
    return irritates ? { percent: figure(notAdditive.irritant), specific: false } : null;
  };
  return firstAtLimit(context, alone, limitOf, `${kind}-alone`, notAdditive.cite, used);
}
