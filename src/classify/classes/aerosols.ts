import { sumOf, tidy } from '../../quantity/sum.ts';
import type { Basis } from '../../reference/thresholds.ts';
import { type ClassResult, type Context, hazardIn } from '../context.ts';
import type { Because } from '../facts/because.ts';
import { ofPhysical } from '../facts/provision.ts';
import { hazardsOf, type Ingredient } from '../ingredient.ts';
import { objective, objectives } from '../ranges/objective.ts';
import { termOf } from '../sums.ts';
import { physicalClass } from './physical.ts';

const CLASS = 'Aerosol';

/** Aerosols: B.3; CLP and UN 2.3. */
export const aerosols = physicalClass(CLASS, {
  own: aerosol,
  objectives: ({ mixture, basis }) =>
    objectives(objective(mixture, ingredient => (isFlammable(basis, ingredient) ? 1 : 0))),
});

const isFlammable = ({ aerosols: { flammable } }: Basis, ingredient: Ingredient): boolean =>
  flammable.some(name => hazardsOf(ingredient, name).length > 0);

/**
 * Aerosols: B.3.1.2.1 and B.3.1.2.2 with Table B.3.1; CLP 2.3.2; UN 2.3.2. Every aerosol has one of three categories.
 * With more than 1 % of flammable components by mass it is Category 1 unless a flammability test in the record says
 * otherwise (Note 3 to the table). At or below, the heat of combustion decides, which the record gives as evidence.
 */
function aerosol({ basis, mixture, scale }: Context): ClassResult {
  const { above, untested, heatOfCombustion, otherwise, cite } = basis.aerosols;
  const components = mixture.ingredients.filter(
    ingredient => ingredient.percent.value > 0 && isFlammable(basis, ingredient),
  );
  const parts = components.map(({ percent }) => ({ amount: percent, weight: 1 }));
  const over = scale.compareSum(parts, above.percent) > 0;
  const because: Because = {
    kind: 'aerosol',
    cites: [ofPhysical(basis, `${over ? above.cite : cite}, ${untested.cite}`)],
    terms: components.map(component => termOf(component)),
    total: tidy(sumOf(parts)),
    limit: above.percent,
    above: over,
    category: untested.category,
    otherwise,
    heatOfCombustion,
  };
  if (!over) return { class: CLASS, outcome: 'insufficient-data', because };
  const { category } = untested;
  return {
    class: CLASS,
    outcome: 'classified',
    hazard: hazardIn(CLASS, category),
    because,
  };
}
