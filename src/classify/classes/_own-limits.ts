import type { Exact } from '../../quantity/exact.ts';
import { show, showBeside } from '../../quantity/sum.ts';
import { type ClassResult, type Context, plainHazard } from '../context.ts';
import { hazardsOf, type Ingredient, limitsOf } from '../ingredient.ts';
import { reason } from '../reasons.ts';
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
  { basis, mixture, applyLimits }: Context,
  hazardClass: string,
  cite: string,
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
        reached: overLow(ingredient.percent, limit),
      });
    }
  }
  // Of one ingredient the mildest category has the lowest limit.
  compared.sort((a, b) => (a.category < b.category ? -1 : 1));
  const reached = compared.find(each => each.reached);
  if (!reached && (open || compared.length === 0)) return null;
  const told = reached ? [reached] : lowestOfEach(compared);
  const because = reason(() => ({
    rule: 'specific concentration limit',
    cite: `${cite}; ${basis.specificLimits.cite}`,
    working: told.map(comparison).join('; '),
    total: told[0]!.ingredient.percent.value,
    limit: told[0]!.low.value,
    unit: '%',
    terms: told.map(({ ingredient: { name, percent } }) => ({ name, percent: percent.value, weight: 1 })),
  }));
  const floor = basis.physicalScreening.relevantFrom.percent;
  if (!reached) return { class: hazardClass, outcome: 'not-classified', because, floor };
  const hazard = plainHazard(hazardClass, reached.category, reached.statement ? [reached.statement] : []);
  return { class: hazardClass, outcome: 'classified', hazard, because };
}

const lowestOfEach = (compared: readonly Compared[]): Compared[] => [
  ...new Map(compared.map(each => [each.ingredient, each])).values(),
];

const comparison = ({ ingredient: { name, percent }, category, low, reached }: Compared): string =>
  `${showBeside(percent.value, low.value)} % ${name} ${reached ? '>=' : '<'} ${show(low.value)} % (Category ${category})`;
