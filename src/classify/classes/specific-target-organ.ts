import type { Hazard, TransientEffect } from '../../notation/hazard.ts';
import type { Exact } from '../../quantity/exact.ts';
import { constant } from '../constant.ts';
import { type ClassResult, type Context, plainHazard } from '../context.ts';
import { ofHealth } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';
import { concerns, hazardsOf, type Ingredient, limitsOf } from '../ingredient.ts';
import { type Objective, objective, objectives } from '../ranges/objective.ts';
import type { ReadingId } from '../readings.ts';
import { becauseOfSum, figure, genericTerm, reachesLimit, type SumTerm, specificTerm } from '../sums.ts';
import { byIngredient, candidatesOf, type Trigger } from './by-ingredient.ts';

/**
 * Specific target organ toxicity, Categories 1 and 2, single and repeated exposure: A.8.3.4.1 with Table A.8.2,
 * A.9.3.4.1 with Table A.9.3; CLP and UN 3.8.3.4.1, 3.9.3.4.1. Not additive.
 */
export function targetOrgans(context: Context): ClassResult[] {
  return (['STOT SE', 'STOT RE'] as const).map(hazardClass => {
    const statements: Record<string, string> =
      hazardClass === 'STOT SE' ? { '1': 'H370', '2': 'H371' } : { '1': 'H372', '2': 'H373' };
    const table = context.basis.byIngredient[hazardClass]!;
    const { result, triggers } = byIngredient(context, hazardClass, table, statements);
    if (result.outcome !== 'classified') return result;
    const disputed = table.category1DisputedBelow?.percent;
    const depends =
      disputed !== undefined &&
      triggers.some(
        ({ own, ingredient }) => own === '1' && context.scale.compare(ingredient.percent, disputed) < 0,
      );
    const hazards = triggers.flatMap(({ ingredient }) =>
      hazardsOf(ingredient, hazardClass).filter(({ category }) => category !== '3'),
    );
    const organs = [...new Set(hazards.flatMap(hazard => hazard.organs))];
    const routes = [...new Set(hazards.map(({ route }) => route))];
    const route = routes.length === 1 ? routes[0]! : null;
    const hidden =
      result.hazard.category === '1' ? hiddenOrgans(context, hazardClass, organs, table.cite) : [];
    return {
      ...result,
      hazard: { ...result.hazard, organs, route },
      readings: [
        ...(result.readings ?? []),
        ...(depends ? (['stot-1-below-ten'] as const) : []),
        ...(hidden.length > 0 ? (['stot-worst-category'] as const) : []),
      ],
      warnings: [...hidden, ...unnamedOrgans(context, hazardClass, triggers, organs, table.cite)],
    };
  });
}

const named = (hazards: readonly Hazard[]): readonly string[] => hazards.flatMap(({ organs }) => organs);

/** Ingredients that give Category 2 for an organ which Category 1 of the mixture does not name. */
function hiddenOrgans(
  context: Context,
  hazardClass: 'STOT SE' | 'STOT RE',
  organs: readonly string[],
  cite: string,
): Warning[] {
  const milder = candidatesOf(context, hazardClass, context.basis.byIngredient[hazardClass]!).filter(
    ({ own, result, reached }) => reached && own === '2' && result === '2',
  );
  return milder.flatMap(({ ingredient }) => {
    const hazards = hazardsOf(ingredient, hazardClass).filter(({ category }) => category === '2');
    const own = named(hazards);
    if (own.length > 0 && own.every(organ => organs.includes(organ))) return [];
    const { index, percent } = ingredient;
    const cites = [ofHealth(context.basis, cite)];
    return [
      { id: 'stot-other-organ', class: hazardClass, constituent: index, amount: percent, organs: own, cites },
    ];
  });
}

/** Ingredients without an organ beside others that name theirs: the statement would read as complete. */
function unnamedOrgans(
  { basis }: Context,
  hazardClass: string,
  triggers: readonly Trigger[],
  organs: readonly string[],
  cite: string,
): Warning[] {
  if (organs.length === 0) return [];
  const without = triggers.filter(({ ingredient }) => named(hazardsOf(ingredient, hazardClass)).length === 0);
  return [...new Set(without.map(({ ingredient }) => ingredient.index))].map(constituent => ({
    id: 'stot-organ-missing',
    class: hazardClass,
    constituent,
    organs,
    cites: [ofHealth(basis, cite)],
  }));
}

const effects = [
  { effect: 'respiratory irritation', rule: 'respiratory-irritation', statement: 'H335' },
  { effect: 'narcotic effects', rule: 'narcotic-effects', statement: 'H336' },
] as const;

/** Which way the sum of each effect gets worse; a specific range has an end from which it counts no longer. */
export function transientObjectives(context: Context): readonly Objective[] {
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
export function transientEffects(context: Context): readonly ClassResult[] {
  if (concerns(context.mixture, 'STOT SE')) return judgeTransient(context);
  return constant(context.basis, 'STOT SE 3', () => judgeTransient(context));
}

function judgeTransient(context: Context): ClassResult[] {
  const { basis, scale } = context;
  const rules = basis.transientOrganEffects;
  return effects.map(({ effect, rule, statement }) => {
    const used = new Set<ReadingId>();
    const terms = context.mixture.ingredients
      .map(ingredient => transientTerm(context, ingredient, effect, statement, used))
      .filter(term => term !== null);
    const label = `STOT SE 3 (${effect})`;
    const floor = rules.relevantFrom.percent;
    const reached = reachesLimit(scale, terms, rules.sum.percent);
    const because =
      terms.length > 0
        ? becauseOfSum(terms, {
            rule,
            limit: rules.sum.percent,
            reached,
            cite: ofHealth(basis, rules.sum.cite),
            limitsCite: ofHealth(basis, basis.specificLimits.cite),
          })
        : { kind: 'none' as const, rule, from: [floor], cites: [ofHealth(basis, rules.relevantFrom.cite)] };
    if (terms.length > 0) used.add('stot-se-3-sum');
    if (!reached) return { class: label, outcome: 'not-classified', because, readings: [...used], floor };
    const hazard = { ...plainHazard('STOT SE', '3', [statement]), effect };
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
