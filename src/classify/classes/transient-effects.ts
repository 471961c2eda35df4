import type { TransientEffect } from '../../notation/hazard.ts';
import { listedByEffect } from '../../notation/listed-class.ts';
import type { Exact } from '../../quantity/exact.ts';
import { always, type ClassRule } from '../class-rule.ts';
import { constant } from '../constant.ts';
import { type ClassResult, type Context, hazardIn } from '../context.ts';
import type { Because } from '../facts/because.ts';
import { ofHealth } from '../facts/provision.ts';
import type { Ended } from '../facts/reason-base.ts';
import { hazardsOf, type Ingredient, limitsOf } from '../ingredient.ts';
import { type Objective, objective, objectives } from '../ranges/objective.ts';
import type { ReadingId } from '../readings.ts';
import { becauseOfSum, figure, genericTerm, reachesLimit, type SumTerm, specificTerm } from '../sums.ts';

const effects = [
  { effect: 'respiratory irritation', rule: 'respiratory-irritation', statement: 'H335' },
  { effect: 'narcotic effects', rule: 'narcotic-effects', statement: 'H336' },
] as const;

/** Which way the sum of each effect gets worse; a specific range has an end from which it counts no longer. */
function transientObjectives(context: Context): readonly Objective[] {
  const { mixture } = context;
  return objectives(
    ...effects.map(({ effect, statement }) => {
      const found = mixture.ingredients.map(ingredient => ownEffect(context, ingredient, effect, statement));
      const caps = found.flatMap(({ low, high }, constituent) =>
        low && high ? [{ constituent, below: high }] : [],
      );
      const limit = figure(context.basis.transientOrganEffects.sum.percent);
      return objective(
        mixture,
        ({ index }) => {
          const { has, low } = found[index]!;
          return has || low ? 1 / (low ?? limit).value : 0;
        },
        caps,
      );
    }),
  );
}

/**
 * STOT SE 3: respiratory irritation and narcotic effects summed apart, A.8.3.4.5 and A.8.3.4.6;
 * CLP and UN 3.8.3.4.5.
 */
export const transientEffects: ClassRule = {
  listed: 'STOT SE',
  categories: ['3'],
  isOf: always,
  judge: context =>
    context.mixture.classes.has('STOT SE')
      ? judgeTransient(context)
      : constant(context.basis, 'STOT SE 3', () => judgeTransient(context)),
  objectives: transientObjectives,
  limitedBy: ['STOT SE'],
  cutOff: ({ transientOrganEffects }) => transientOrganEffects.relevantFrom.percent,
};

function judgeTransient(context: Context): ClassResult[] {
  const { basis, scale } = context;
  const rules = basis.transientOrganEffects;
  return effects.map(({ effect, rule, statement }) => {
    const used = new Set<ReadingId>();
    const terms = context.mixture.ingredients
      .map(ingredient => transientTerm(context, ingredient, effect, statement, used))
      .filter(term => term !== null);
    const ended = context.mixture.ingredients.flatMap(ingredient =>
      endedRange(context, ingredient, effect, statement),
    );
    const label = listedByEffect(effect);
    const floor = rules.relevantFrom.percent;
    const reached = reachesLimit(scale, terms, rules.sum.percent);
    const reason: Because =
      terms.length > 0
        ? becauseOfSum(terms, {
            rule,
            limit: rules.sum.percent,
            reached,
            cite: ofHealth(basis, rules.sum.cite),
            limitsCite: ofHealth(basis, basis.specificLimits.cite),
          })
        : { kind: 'none', rule, from: [floor], cites: [ofHealth(basis, rules.relevantFrom.cite)] };
    const because = ended.length > 0 ? { ...reason, ended } : reason;
    if (terms.length > 0) used.add('stot-se-3-sum');
    if (!reached) return { class: label, outcome: 'not-classified', because, readings: [...used], floor };
    const hazard = hazardIn('STOT SE', '3', { effect });
    return { class: label, outcome: 'classified', hazard, because, readings: [...used], floor };
  });
}

/** Whether an ingredient has an effect, and the bounds of its specific range for it. */
function ownEffect(
  { applyLimits }: Context,
  ingredient: Ingredient,
  effect: TransientEffect,
  statement: string,
): { readonly has: boolean; readonly any: boolean; readonly low: Exact | null; readonly high: Exact | null } {
  const has = hazardsOf(ingredient, 'STOT SE').some(
    hazard => hazard.category === '3' && (hazard.effect === null || hazard.effect === effect),
  );
  const own = applyLimits
    ? limitsOf(ingredient, 'STOT SE').filter(
        limit =>
          limit.category === '3' &&
          (limit.statement ? limit.statement === statement : has || effect === 'respiratory irritation'),
      )
    : [];
  return {
    has,
    any: own.length > 0,
    low: own.find(limit => limit.low !== null)?.low ?? null,
    high: own.find(limit => limit.high !== null && limit.low !== null)?.high ?? null,
  };
}

/** An ingredient above its specific range for an effect, whether the rule hears of it or not: none may be denied. */
function endedRange(
  context: Context,
  ingredient: Ingredient,
  effect: TransientEffect,
  statement: string,
): readonly Ended[] {
  const { high } = ownEffect(context, ingredient, effect, statement);
  return high && context.scale.reaches(ingredient.percent, high.value)
    ? [{ constituent: ingredient.index, amount: ingredient.percent, upTo: high }]
    : [];
}

function transientTerm(
  context: Context,
  ingredient: Ingredient,
  effect: TransientEffect,
  statement: string,
  used: Set<ReadingId>,
): SumTerm | null {
  const { basis, scale } = context;
  const rules = basis.transientOrganEffects;
  const { has, any, low, high } = ownEffect(context, ingredient, effect, statement);
  if (!has && !any) return null;
  if (any) used.add('limit-upper-end');
  if (high && scale.reaches(ingredient.percent, high.value)) return null;
  if (!has && !low) return null;
  const floor = low && low.value < rules.relevantFrom.percent ? low.value : rules.relevantFrom.percent;
  if (!ingredient.relevant && !scale.reaches(ingredient.percent, floor)) {
    used.add('below-cut-off');
    return null;
  }
  if (!low) return genericTerm(ingredient, rules.sum.percent);
  used.add('limit-ratio');
  return specificTerm(ingredient, low);
}
