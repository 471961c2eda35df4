import type { Hazard } from '../../notation/hazard.ts';
import type { Basis } from '../../reference/thresholds.ts';
import { bySource } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';
import type { Ingredient } from '../ingredient.ts';
import { outsideBasis } from '../outside-basis.ts';

/** Whether a category of acute toxicity has an estimate by its route, in any form that is open. */
const isConverted = (
  { acuteToxicity: { conversion } }: Basis,
  { category, route, form }: Pick<Hazard, 'category' | 'route' | 'form'>,
): boolean => {
  const keys =
    route !== 'inhalation' ? [route ?? 'oral'] : form ? [form] : (['gas', 'vapour', 'mist'] as const);
  return keys.some(key => conversion[key][category] !== undefined);
};

/** Hazards of ingredients in a category that the basis has not: no rule takes them, and none may be lost in silence. */
export function categoriesOutside(basis: Basis, ingredients: readonly Ingredient[]): Warning[] {
  const warnings: Warning[] = [];
  for (const { index, data } of ingredients) {
    const outside = data.hazards.filter(
      hazard =>
        outsideBasis(basis, hazard.code) !== null ||
        (hazard.hazardClass === 'Acute Tox.' && !isConverted(basis, hazard)),
    );
    if (outside.length > 0)
      warnings.push({
        id: 'category-not-in-basis',
        constituent: index,
        hazards: outside.map(({ code }) => code),
        basis: basis.title,
        cites: [
          ...new Set(
            outside.map(({ code }) => outsideBasis(basis, code) ?? basis.acuteToxicity.conversion.cite),
          ),
        ].map(bySource),
      });
  }
  return warnings;
}
