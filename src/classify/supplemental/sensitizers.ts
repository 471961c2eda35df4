import type { Exact } from '../../quantity/exact.ts';
import type { Scale } from '../../quantity/scale.ts';
import type { Because } from '../facts/because.ts';
import { hazardsOf, type Ingredient, limitsOf, lowestBound } from '../ingredient.ts';
import { figure } from '../sums.ts';
import { type Finding, hasClass, type SupplementalInput } from './_finding.ts';
import { ofAnnex, rules } from './_rules.ts';

const classes = ['Skin Sens.', 'Resp. Sens.'] as const;

/** A sensitizer at or above the percent from which it may provoke a reaction. */
export interface Elicitor {
  readonly ingredient: Ingredient;
  readonly hazardClass: string;
  /** Percent from which it counts: Table 3.4.6, or one tenth of a specific limit. */
  readonly limit: Exact;
  readonly tenth: boolean;
}

/**
 * Sensitizers from the limits of CLP Annex I Table 3.4.6 up, or from one tenth of their specific limit (Annex II
 * 2.8, 2.10): those of a mixture that is no sensitizer stand in EUH208, those of a sensitizing mixture are named on
 * its label.
 */
export function elicitors({
  mixture,
  applyLimits,
  scale,
}: Pick<SupplementalInput, 'mixture' | 'applyLimits' | 'scale'>): Elicitor[] {
  return mixture.ingredients.flatMap(ingredient =>
    classes.flatMap(hazardClass => {
      const own = elicitationLimit(ingredient, hazardClass, applyLimits);
      if (!own || !atLeast(scale, ingredient.percent, own)) return [];
      return [{ ingredient, hazardClass, ...own }];
    }),
  );
}

function elicitationLimit(
  ingredient: Ingredient,
  hazardClass: (typeof classes)[number],
  applyLimits: boolean,
): { limit: Exact; tenth: boolean } | null {
  const specific = applyLimits ? lowestBound(limitsOf(ingredient, hazardClass)) : null;
  if (specific) return { limit: specific, tenth: true };
  const table = rules.sensitizers.limits[hazardClass] as Readonly<Record<string, number>>;
  const from = hazardsOf(ingredient, hazardClass).flatMap(({ category }) => table[category] ?? []);
  return from.length > 0 ? { limit: figure(Math.min(...from)), tenth: false } : null;
}

// The percent over the specific limit against 0.1, so that no division rounds.
const atLeast = (scale: Scale, percent: Exact, { limit, tenth }: { limit: Exact; tenth: boolean }): boolean =>
  scale.compareSum([{ amount: percent, weight: 1, over: limit }], tenth ? rules.sensitizers.tenth : 1) >= 0;

/** EUH208, 2.8: not where the mixture is classified as a sensitizer of either kind. */
export function sensitizers(input: SupplementalInput, alreadyNamed: ReadonlySet<Ingredient>): Finding[] {
  if (hasClass(input, classes)) return [];
  const found = elicitors(input).filter(({ ingredient }) => !alreadyNamed.has(ingredient));
  const [first] = found;
  if (!first) return [];
  const { code, field } = rules.sensitizers;
  const names = [...new Set(found.map(({ ingredient }) => ingredient.name))];
  const readings = [
    'euh208-other-kind',
    ...(found.some(({ tenth }) => tenth) ? (['elicitation-specific-limit'] as const) : []),
  ] as const;
  return [{ code, fields: { [field]: names }, because: becauseOf(found), readings }];
}

const becauseOf = (found: readonly Elicitor[]): Because => ({
  kind: 'elicitors',
  cites: [ofAnnex(rules.sensitizers.cite)],
  elicitors: found.map(({ ingredient, hazardClass, limit, tenth }) => ({
    constituent: ingredient.index,
    amount: ingredient.percent,
    class: hazardClass,
    limit,
    tenth,
  })),
});
