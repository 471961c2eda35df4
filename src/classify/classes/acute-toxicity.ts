import type { Scale } from '../../quantity/scale.ts';
import { scaledBy } from '../../quantity/sum.ts';
import type { AcuteKey } from '../../reference/thresholds.ts';
import { constant } from '../constant.ts';
import type { ClassResult, Context } from '../context.ts';
import type { Warning } from '../facts/warning.ts';
import { concerns, type Ingredient, inhalationFormOf } from '../ingredient.ts';
import { type Objective, objective, objectives } from '../ranges/objective.ts';
import { estimateOf } from './_acute-estimate.ts';
import { isUnknown } from './_acute-gather.ts';
import { type AcuteSum, acuteSum } from './_acute-sum.ts';

export type { AcuteSum } from './_acute-sum.ts';

type RouteName = 'oral' | 'dermal' | 'inhalation';

const keysOf: Readonly<Record<RouteName, readonly AcuteKey[]>> = {
  oral: ['oral'],
  dermal: ['dermal'],
  inhalation: ['gas', 'vapour', 'mist'],
};

const statementOf: Readonly<Record<RouteName, Readonly<Record<string, string>>>> = {
  oral: { '1': 'H300', '2': 'H300', '3': 'H301', '4': 'H302', '5': 'H303' },
  dermal: { '1': 'H310', '2': 'H310', '3': 'H311', '4': 'H312', '5': 'H313' },
  inhalation: { '1': 'H330', '2': 'H330', '3': 'H331', '4': 'H332', '5': 'H333' },
};

/** Which way each sum of a route or form gets worse, with the unknown ingredients beside it where there are any. */
export function acuteObjectives(context: Context): readonly Objective[] {
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

/** Acute toxicity by the three routes; inhalation takes the most severe of its forms. */
export function acuteToxicity(context: Context): AcuteToxicity {
  if (concerns(context.mixture, 'Acute Tox.') || context.mixture.ingredients.some(hasEstimateOrGap))
    return judge(context);
  const { basis } = context;
  return constant(basis, 'Acute Tox.', () => judge(context));
}

/** The results of the three routes, with the sums of all routes and forms. */
export interface AcuteToxicity {
  readonly results: readonly ClassResult[];
  readonly sums: ReadonlyMap<AcuteKey, AcuteSum>;
}

const hasEstimateOrGap = ({ data: { ate, unknown, hazards } }: Ingredient): boolean =>
  unknown.size > 0 ||
  hazards.length > 0 ||
  Boolean(ate.oral || ate.dermal || ate.gas || ate.vapour || ate.mist);

function judge(context: Context): AcuteToxicity {
  const sums = new Map<AcuteKey, AcuteSum>();
  const results: ClassResult[] = [];
  for (const route of ['oral', 'dermal', 'inhalation'] as const) {
    let worst: AcuteSum | null = null;
    let warnings: readonly Warning[] | undefined;
    for (const key of keysOf[route]) {
      const sum = acuteSum(context, key);
      sums.set(key, sum);
      if (sum.warnings.length > 0) warnings = [...(warnings ?? []), ...sum.warnings];
      if (!worst || severer(context.scale, sum, worst)) worst = sum;
    }
    const { category, explain, unknown, readings, key } = worst!;
    const because = explain();
    if (category) {
      results.push({
        class: 'Acute Tox.',
        route,
        because,
        readings,
        warnings,
        outcome: 'classified',
        hazard: {
          code: `Acute Tox. ${category}`,
          hazardClass: 'Acute Tox.',
          category,
          route,
          form: route === 'inhalation' ? (key as 'gas' | 'vapour' | 'mist') : null,
          effect: null,
          organs: [],
          statements: [statementOf[route][category]!],
        },
      });
    } else {
      const outcome = unknown > 0 ? 'insufficient-data' : 'not-classified';
      results.push({ class: 'Acute Tox.', route, because, readings, warnings, outcome });
    }
  }
  return { results, sums };
}

// Of one category, the form that is deeper in it, or nearer to the last one.
function severer(scale: Scale, a: AcuteSum, b: AcuteSum): boolean {
  if (a.category !== b.category)
    return a.category !== null && (b.category === null || a.category < b.category);
  if (a.limit === null || b.limit === null) return a.limit !== null && b.limit === null;
  return scale.compareSum([...scaledBy(a.parts, a.limit), ...scaledBy(b.parts, -b.limit)], 0) > 0;
}
