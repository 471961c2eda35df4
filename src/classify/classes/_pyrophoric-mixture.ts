import { compareSum, show, showBeside, sumOf, tidy } from '../../quantity/sum.ts';
import type { PhysicalClassRules } from '../../reference/thresholds.ts';
import { type ClassResult, type Context, plainHazard } from '../context.ts';
import { hazardsOf } from '../ingredient.ts';
import { reason } from '../reasons.ts';

/**
 * A gas mixture with more than 1 % by volume of pyrophoric gases is pyrophoric itself where no data say otherwise
 * (B.2.2.1, Note 4, and B.2.3.3, which speak of flammable mixtures; a mixture not shown to be non-flammable is held to
 * be one). Null at or below, where it is left to judgment.
 */
export function pyrophoricMixture(
  { mixture }: Context,
  { class: name, mixtureAbove }: PhysicalClassRules,
  cite: string,
): ClassResult | null {
  if (mixtureAbove === undefined) return null;
  const gases = mixture.ingredients.filter(ingredient => hazardsOf(ingredient, name).length > 0);
  const parts = gases.map(({ percent }) => ({ amount: percent, weight: 1 }));
  if (compareSum(parts, mixtureAbove) <= 0) return null;
  const because = reason(() => {
    const total = tidy(sumOf(parts));
    const terms = gases.map(gas => ({ name: gas.name, percent: gas.percent.value, weight: 1 }));
    const sum = terms.map(term => `${show(term.percent)} % ${term.name}`).join(' + ');
    return {
      rule: 'pyrophoric gases of a mixture without data of its own',
      cite,
      working: `${sum} = ${showBeside(total, mixtureAbove)} % by volume > ${show(mixtureAbove)} %`,
      total,
      limit: mixtureAbove,
      unit: '%',
      terms,
    };
  });
  const { statement } = hazardsOf(gases[0]!, name)[0]!;
  return {
    class: name,
    outcome: 'classified',
    hazard: plainHazard(name, '', statement ? [statement] : []),
    because,
  };
}
