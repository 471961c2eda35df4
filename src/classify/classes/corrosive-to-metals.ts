import type { Context } from '../context.ts';
import type { Sign } from '../facts/physical.ts';
import { hazardsOf } from '../ingredient.ts';
import { physicalClass } from './physical.ts';

/** Corrosive to metals: B.16; CLP and UN 2.16. Open for every liquid and solid that something points to. */
export const corrosiveToMetals = physicalClass('Met. Corr.', { signs });

/** An extreme pH or a corrosive ingredient points to corrosion of metals without deciding it (common practice, no source). */
function signs({ mixture, basis, scale }: Context): Sign[] {
  const pH = mixture.properties.pH?.value;
  const { acid, base } = basis.skin.extremePh;
  const found: Sign[] = [];
  if (pH && (scale.compare(pH, acid) <= 0 || scale.reaches(pH, base))) found.push({ kind: 'ph', pH });
  for (const ingredient of mixture.ingredients)
    if (
      hazardsOf(ingredient, 'Skin Corr.').length > 0 &&
      scale.reaches(ingredient.percent, basis.skin.relevantFrom.percent)
    )
      found.push({ kind: 'corrosive', constituent: ingredient.index, amount: ingredient.percent });
  return found;
}
