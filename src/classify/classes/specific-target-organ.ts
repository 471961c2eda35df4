import type { TransientEffect } from '../../notation/hazard.ts';
import { compare, reaches, show } from '../../quantity/sum.ts';
import { constant } from '../constant.ts';
import { type ClassResult, type Context, citeHealth, plainHazard } from '../context.ts';
import { concerns, hazardsOf, type Ingredient, limitsOf } from '../ingredient.ts';
import type { ReadingId } from '../readings.ts';
import {
  becauseOfNone,
  becauseOfSum,
  genericTerm,
  reachesLimit,
  type SumTerm,
  specificTerm,
} from '../sums.ts';
import { byIngredient } from './by-ingredient.ts';

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
      triggers.some(({ own, ingredient }) => own === '1' && compare(ingredient.percent, disputed) < 0);
    const hazards = triggers.flatMap(({ ingredient }) =>
      hazardsOf(ingredient, hazardClass).filter(({ category }) => category !== '3'),
    );
    const organs = [...new Set(hazards.flatMap(hazard => hazard.organs))];
    const routes = [...new Set(hazards.map(({ route }) => route))];
    const route = routes.length === 1 ? routes[0]! : null;
    return {
      ...result,
      hazard: { ...result.hazard, organs, route },
      readings: [...(result.readings ?? []), ...(depends ? (['stot-1-below-ten'] as const) : [])],
    };
  });
}

const effects = [
  { effect: 'respiratory irritation', statement: 'H335' },
  { effect: 'narcotic effects', statement: 'H336' },
] as const;

/**
 * STOT SE 3: respiratory irritation and narcotic effects summed apart, A.8.3.4.5 and A.8.3.4.6;
 * CLP and UN 3.8.3.4.5.
 */
export function transientEffects(context: Context): readonly ClassResult[] {
  if (concerns(context.mixture, 'STOT SE')) return judgeTransient(context);
  return constant(context.basis, 'STOT SE 3', () => judgeTransient(context));
}

function judgeTransient(context: Context): ClassResult[] {
  const { basis } = context;
  const rules = basis.transientOrganEffects;
  return effects.map(({ effect, statement }) => {
    const used = new Set<ReadingId>();
    const terms = context.mixture.ingredients
      .map(ingredient => transientTerm(context, ingredient, effect, statement, used))
      .filter(term => term !== null);
    const label = `STOT SE 3 (${effect})`;
    const floor = rules.relevantFrom.percent;
    const cite = citeHealth(basis, rules.sum.cite);
    const because =
      terms.length > 0
        ? becauseOfSum(
            terms,
            rules.sum.percent,
            `sum of ingredients with ${effect}`,
            cite,
            basis.specificLimits.cite,
          )
        : becauseOfNone(
            'no relevant ingredient',
            citeHealth(basis, rules.relevantFrom.cite),
            `no ingredient with ${effect} at ${show(floor)} % or more`,
          );
    if (terms.length > 0) used.add('stot-se-3-sum');
    if (!reachesLimit(terms, rules.sum.percent))
      return { class: label, outcome: 'not-classified', because, readings: [...used], floor };
    const hazard = { ...plainHazard('STOT SE', '3', [statement]), effect };
    return { class: label, outcome: 'classified', hazard, because, readings: [...used], floor };
  });
}

function transientTerm(
  { basis, applyLimits }: Context,
  ingredient: Ingredient,
  effect: TransientEffect,
  statement: string,
  used: Set<ReadingId>,
): SumTerm | null {
  const rules = basis.transientOrganEffects;
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
  if (!has && own.length === 0) return null;
  const low = own.find(limit => limit.low !== null)?.low ?? null;
  const high = own.find(limit => limit.high !== null && limit.low !== null)?.high ?? null;
  if (own.length > 0) used.add('limit-upper-end');
  if (high && reaches(ingredient.percent, high.value)) return null;
  if (!has && !low) return null;
  const floor = low && low.value < rules.relevantFrom.percent ? low.value : rules.relevantFrom.percent;
  if (!ingredient.relevant && !reaches(ingredient.percent, floor)) {
    used.add('below-cut-off');
    return null;
  }
  if (!low) return genericTerm(ingredient, rules.sum.percent);
  used.add('limit-ratio');
  return specificTerm(ingredient, low);
}
