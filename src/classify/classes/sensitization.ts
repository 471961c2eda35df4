import { always, type ClassRule } from '../class-rule.ts';
import type { ClassResult, Context } from '../context.ts';
import { byIngredient, cutOffOf } from './by-ingredient.ts';

const sensitization = (name: string): ClassRule => ({
  listed: name,
  isOf: always,
  judge: context => [judge(context, name)],
  limitedBy: [name],
  cutOff: ({ byIngredient: tables }, category) => cutOffOf(tables[name], category),
});

function judge(context: Context, name: string): ClassResult {
  const { result, triggers } = byIngredient(context, name, context.basis.byIngredient[name]!);
  if (result.outcome !== 'classified') return result;
  const own = [...new Set(triggers.map(trigger => trigger.own))].sort();
  return {
    ...result,
    hazard: { ...result.hazard, triggers: own },
    readings: [...(result.readings ?? []), 'sensitizer-category'],
  };
}

/** Respiratory sensitization: A.4.3.3 with Table A.4.5; CLP and UN 3.4.3.3 with Table 3.4.5. */
export const respiratorySensitization = sensitization('Resp. Sens.');
/** Skin sensitization, as above. */
export const skinSensitization = sensitization('Skin Sens.');
