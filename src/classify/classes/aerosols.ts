import { sumOf, tidy } from '../../quantity/sum.ts';
import { type ClassResult, type Context, plainHazard } from '../context.ts';
import type { Because } from '../facts/because.ts';
import { ofPhysical } from '../facts/provision.ts';
import { hazardsOf, type Ingredient } from '../ingredient.ts';
import { termOf } from '../sums.ts';

const CLASS = 'Aerosol';
const statements: Readonly<Record<string, readonly string[]>> = { '1': ['H222', 'H229'] };

/**
 * Aerosols: B.3.1.2.1 and B.3.1.2.2 with Table B.3.1; CLP 2.3.2; UN 2.3.2. Every aerosol has one of three categories.
 * With more than 1 % of flammable components by mass it is Category 1 unless a flammability test in the record says
 * otherwise (Note 3 to the table). At or below, the heat of combustion decides, which the record gives as evidence.
 */
export function aerosol({ basis, mixture, scale }: Context): ClassResult {
  const { flammable, above, untested, heatOfCombustion, otherwise, cite } = basis.aerosols;
  const isFlammable = (ingredient: Ingredient) =>
    ingredient.percent.value > 0 && flammable.some(name => hazardsOf(ingredient, name).length > 0);
  const components = mixture.ingredients.filter(isFlammable);
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
    hazard: plainHazard(CLASS, category, statements[category] ?? []),
    because,
  };
}
