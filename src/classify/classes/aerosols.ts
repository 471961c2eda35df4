import { compareSum, show, showBeside, sumOf, tidy } from '../../quantity/sum.ts';
import type { Because } from '../classification.ts';
import { type ClassResult, type Context, citePhysical, plainHazard } from '../context.ts';
import { hazardsOf, type Ingredient } from '../ingredient.ts';
import { reason } from '../reasons.ts';

const CLASS = 'Aerosol';
const statements: Readonly<Record<string, readonly string[]>> = { '1': ['H222', 'H229'] };

/**
 * Aerosols: B.3.1.2.1 and B.3.1.2.2 with Table B.3.1; CLP 2.3.2; UN 2.3.2. Every aerosol has one of three categories.
 * With more than 1 % of flammable components by mass it is Category 1 unless a flammability test in the record says
 * otherwise (Note 3 to the table). At or below, the heat of combustion decides, which the record gives as evidence.
 */
export function aerosol({ basis, mixture }: Context): ClassResult {
  const { flammable, above, untested, heatOfCombustion, otherwise, cite } = basis.aerosols;
  const isFlammable = (ingredient: Ingredient) =>
    ingredient.percent.value > 0 && flammable.some(name => hazardsOf(ingredient, name).length > 0);
  const components = mixture.ingredients.filter(isFlammable);
  const parts = components.map(({ percent }) => ({ amount: percent, weight: 1 }));
  const over = compareSum(parts, above.percent) > 0;
  const because = reason((): Because => {
    const total = tidy(sumOf(parts));
    const terms = components.map(({ name, percent }) => ({ name, percent: percent.value, weight: 1 }));
    const sum = terms.map(term => `${show(term.percent)} % ${term.name}`).join(' + ');
    const compared = `${sum ? `${sum} = ` : ''}${showBeside(total, above.percent)} % flammable components ${over ? '>' : '<='} ${show(above.percent)} %`;
    const rest = over
      ? `no flammability test in the record, so Category ${untested.category}`
      : `Category ${otherwise} if the heat of combustion is below ${show(heatOfCombustion)} kJ/g, else Category ${untested.category} unless tested; the record gives neither as evidence`;
    return {
      rule: over ? 'flammable components of an untested aerosol' : 'heat of combustion needed',
      cite: citePhysical(basis, over ? `${above.cite}, ${untested.cite}` : `${cite}, ${untested.cite}`),
      working: `${compared}; ${rest}`,
      total,
      limit: above.percent,
      unit: '%',
      terms,
    };
  });
  if (!over) return { class: CLASS, outcome: 'insufficient-data', because };
  const { category } = untested;
  return {
    class: CLASS,
    outcome: 'classified',
    hazard: plainHazard(CLASS, category, statements[category] ?? []),
    because,
  };
}
