import type { Exact } from '../../quantity/exact.ts';
import { type ClassResult, type Context, hazardIn } from '../context.ts';
import type { Because } from '../facts/because.ts';
import { ofHealth, type Provision } from '../facts/provision.ts';
import { hazardsOf, type Ingredient, limitsOf } from '../ingredient.ts';
import { overLow } from './by-ingredient.ts';

interface Compared {
  readonly ingredient: Ingredient;
  readonly category: string;
  readonly statement: string | null;
  readonly low: Exact;
  readonly reached: boolean;
}

/**
 * Specific concentration limits of a physical class (CLP Article 10, Annex VI): the most severe that is passed gives
 * the class; it is not given where every ingredient of the class stays below a limit of its own. Null where limits do
 * not count or an ingredient of the class has none.
 */
export function byOwnLimits(
  { basis, mixture, applyLimits, scale }: Context,
  hazardClass: string,
  cite: Provision,
): ClassResult | null {
  if (!applyLimits) return null;
  const compared: Compared[] = [];
  let open = false;
  for (const ingredient of mixture.ingredients) {
    const limits = limitsOf(ingredient, hazardClass).filter(({ low }) => low !== null);
    if (limits.length === 0 && ingredient.percent.value > 0 && hazardsOf(ingredient, hazardClass).length > 0)
      open = true;
    for (const limit of limits) {
      const { category, statement, low } = limit;
      compared.push({
        ingredient,
        category,
        statement,
        low: low!,
        reached: overLow(scale, ingredient.percent, limit),
      });
    }
  }
  // Of one ingredient the mildest category has the lowest limit.
  compared.sort((a, b) => (a.category < b.category ? -1 : 1));
  const reached = compared.find(each => each.reached);
  if (!reached && (open || compared.length === 0)) return null;
  const told = reached ? [reached] : lowestOfEach(compared);
  const because: Because = {
    kind: 'ingredients',
    rule: 'specific-limit',
    cites: [cite, ofHealth(basis, basis.specificLimits.cite)],
    comparisons: told.map(({ ingredient, category, low, reached: over }) => ({
      constituent: ingredient.index,
      amount: ingredient.percent,
      limit: low,
      reached: over,
      own: category,
      result: category,
      specific: true,
    })),
  };
  const floor = basis.physicalScreening.relevantFrom.percent;
  if (!reached) return { class: hazardClass, outcome: 'not-classified', because, floor };
  const hazard = hazardIn(hazardClass, reached.category, {
    statements: reached.statement ? [reached.statement] : [],
  });
  return { class: hazardClass, outcome: 'classified', hazard, because };
}

const lowestOfEach = (compared: readonly Compared[]): Compared[] => [
  ...new Map(compared.map(each => [each.ingredient, each])).values(),
];
