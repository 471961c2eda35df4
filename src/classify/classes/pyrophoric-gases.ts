import { sumOf, tidy } from '../../quantity/sum.ts';
import type { PhysicalClassRules } from '../../reference/thresholds.ts';
import { type ClassResult, type Context, hazardIn } from '../context.ts';
import type { Provision } from '../facts/provision.ts';
import { hazardsOf } from '../ingredient.ts';
import { objective, objectives } from '../ranges/objective.ts';
import { termOf } from '../sums.ts';
import { physicalClass } from './physical.ts';

const CLASS = 'Pyr. Gas';

/** Pyrophoric gases: B.2; CLP and UN 2.2. */
export const pyrophoricGases = physicalClass(CLASS, {
  decide: pyrophoricMixture,
  objectives: ({ mixture }) =>
    objectives(objective(mixture, ingredient => (hazardsOf(ingredient, CLASS).length > 0 ? 1 : 0))),
});

/**
 * A gas mixture with more than 1 % by volume of pyrophoric gases is pyrophoric itself where no data say otherwise
 * (B.2.2.1, Note 4, and B.2.3.3, which speak of flammable mixtures; a mixture not shown to be non-flammable is held to
 * be one). Null at or below, where it is left to judgment.
 */
function pyrophoricMixture(
  { mixture, scale }: Context,
  { mixtureAbove }: PhysicalClassRules,
  cite: Provision,
): ClassResult | null {
  if (mixtureAbove === undefined) return null;
  const gases = mixture.ingredients.filter(ingredient => hazardsOf(ingredient, CLASS).length > 0);
  const parts = gases.map(({ percent }) => ({ amount: percent, weight: 1 }));
  if (scale.compareSum(parts, mixtureAbove) <= 0) return null;
  const { statement } = hazardsOf(gases[0]!, CLASS)[0]!;
  return {
    class: CLASS,
    outcome: 'classified',
    hazard: hazardIn(CLASS, '', { statements: statement ? [statement] : [] }),
    because: {
      kind: 'sum',
      rule: 'pyrophoric-gases',
      cites: [cite],
      terms: gases.map(gas => termOf(gas)),
      total: tidy(sumOf(parts)),
      limit: mixtureAbove,
      operator: '>',
      reached: true,
    },
  };
}
