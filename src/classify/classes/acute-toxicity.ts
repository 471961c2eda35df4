import type { InhalationForm } from '../../notation/hazard.ts';
import type { Scale } from '../../quantity/scale.ts';
import { scaledBy } from '../../quantity/sum.ts';
import type { AcuteKey } from '../../reference/thresholds.ts';
import { always, type ClassRule } from '../class-rule.ts';
import { constant } from '../constant.ts';
import { type ClassResult, type Context, hazardIn } from '../context.ts';
import type { Warning } from '../facts/warning.ts';
import { type Ingredient, inhalationFormOf } from '../ingredient.ts';
import { type Objective, objective, objectives } from '../ranges/objective.ts';
import { estimateOf, isInhaled, isToxicInhaled } from './_acute-estimate.ts';
import { isUnknown } from './_acute-gather.ts';
import { type AcuteSum, acuteSum } from './_acute-sum.ts';

const CLASS = 'Acute Tox.';

type RouteName = 'oral' | 'dermal' | 'inhalation';

const keysOf: Readonly<Record<RouteName, readonly AcuteKey[]>> = {
  oral: ['oral'],
  dermal: ['dermal'],
  inhalation: ['gas', 'vapour', 'mist'],
};

/** Which way each sum of a route or form gets worse, with the unknown ingredients beside it where there are any. */
function acuteObjectives(context: Context): readonly Objective[] {
  const { mixture, basis, take, scale } = context;
  const rules = basis.acuteToxicity;
  const chosen = take('inhalation-form');
  const unnamed = chosen === 'by-state' ? inhalationFormOf(mixture.form) : (chosen as AcuteKey);
  return Object.values(keysOf)
    .flat()
    .flatMap(key => {
      const estimates = mixture.ingredients.map(ingredient =>
        estimateOf(ingredient, key, rules, unnamed, scale),
      );
      const isOpen = (ingredient: Ingredient): boolean =>
        estimates[ingredient.index] === null && isUnknown(ingredient, key, take, new Set());
      const toxic = (factor: number) => (ingredient: Ingredient) => {
        const estimate = estimates[ingredient.index];
        return estimate ? factor / estimate.value.value : 0;
      };
      const withUnknown = (bound: number) =>
        objective(mixture, each => (isOpen(each) ? 1 : toxic(bound)(each)));
      const unknown = objective(mixture, each => (isOpen(each) ? 1 : 0));
      const bounds = unknown ? Object.values(rules.categories[key]).filter(Number.isFinite) : [];
      return objectives(objective(mixture, toxic(1)), unknown, ...bounds.map(withUnknown));
    });
}

/** Acute toxicity by the three routes; inhalation takes the most severe of its forms (A.1.3; CLP and UN 3.1.3). */
export const acuteToxicity: ClassRule = {
  listed: CLASS,
  isOf: always,
  judge: acuteResults,
  objectives: acuteObjectives,
  limitedBy: [],
  cutOff: ({ acuteToxicity: { relevantFrom } }, category) =>
    category in relevantFrom ? Number(relevantFrom[category]) : null,
};

/** The results of the three routes. */
export function acuteResults(context: Context): readonly ClassResult[] {
  const { basis, mixture } = context;
  if (mixture.classes.has(CLASS) || mixture.ingredients.some(hasEstimateOrGap)) return judge(context);
  return constant(basis, CLASS, () => judge(context));
}

const hasEstimateOrGap = ({ data: { ate, unknown, hazards } }: Ingredient): boolean =>
  unknown.size > 0 ||
  hazards.length > 0 ||
  Boolean(ate.oral || ate.dermal || ate.gas || ate.vapour || ate.mist);

function judge(context: Context): readonly ClassResult[] {
  const results: ClassResult[] = [];
  for (const route of ['oral', 'dermal', 'inhalation'] as const) {
    let worst: AcuteSum | null = null;
    let warnings: readonly Warning[] | undefined;
    const estimates: AcuteSum[] = [];
    // Where nothing is toxic by inhalation its three forms come to the same.
    const same = route === 'inhalation' && !context.mixture.ingredients.some(isToxicInhaled);
    for (const key of keysOf[route]) {
      const sum: AcuteSum = same && worst ? { ...worst, key } : acuteSum(context, key);
      estimates.push(sum);
      if (sum.warnings.length > 0) warnings = [...(warnings ?? []), ...sum.warnings];
      if (!worst || severer(context.scale, sum, worst)) worst = sum;
    }
    const { category, explain, unknown, readings, key } = worst!;
    const because = explain();
    if (category) {
      results.push({
        class: CLASS,
        route,
        because,
        readings,
        warnings,
        estimates,
        outcome: 'classified',
        hazard: hazardIn(CLASS, category, { route, form: isInhaled(key) ? (key as InhalationForm) : null }),
      });
    } else {
      const outcome = unknown > 0 ? 'insufficient-data' : 'not-classified';
      results.push({ class: CLASS, route, because, readings, warnings, estimates, outcome });
    }
  }
  return results;
}

// Of one category, the form that is deeper in it, or nearer to the last one.
function severer(scale: Scale, a: AcuteSum, b: AcuteSum): boolean {
  if (a.category !== b.category)
    return a.category !== null && (b.category === null || a.category < b.category);
  if (a.limit === null || b.limit === null) return a.limit !== null && b.limit === null;
  return scale.compareSum([...scaledBy(a.parts, a.limit), ...scaledBy(b.parts, -b.limit)], 0) > 0;
}
