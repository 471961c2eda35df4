import type { ClassResult, Context } from '../context.ts';
import { byIngredient } from './by-ingredient.ts';

const statements = { 'Resp. Sens.': 'H334', 'Skin Sens.': 'H317' } as const;

/** Respiratory and skin sensitization: A.4.3.3 with Table A.4.5; CLP and UN 3.4.3.3 with Table 3.4.5. */
export function sensitization(context: Context): ClassResult[] {
  return (['Resp. Sens.', 'Skin Sens.'] as const).map(hazardClass => {
    const table = context.basis.byIngredient[hazardClass]!;
    const { result, triggers } = byIngredient(context, hazardClass, table, { '1': statements[hazardClass] });
    if (result.outcome !== 'classified') return result;
    const own = [...new Set(triggers.map(trigger => trigger.own))].sort();
    return {
      ...result,
      hazard: { ...result.hazard, triggers: own },
      readings: [...(result.readings ?? []), 'sensitizer-category'],
    };
  });
}
