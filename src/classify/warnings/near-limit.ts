import doubts from '../../../hazard-data/measured-doubts.json' with { type: 'json' };
import type { AcuteKey } from '../../reference/thresholds.ts';
import type { ClassResult, Context } from '../context.ts';
import type { Because } from '../facts/because.ts';
import { type Figure, figureOf } from '../facts/figure.ts';
import { ofHealth, type Provision } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';

type Held = Figure & { readonly limit: number };

const { share, pH: pHSteps, celsius } = doubts.near;

/** Whether a figure lies close to a limit: a share of it, or a number of degrees or steps of pH (common practice). */
function isClose({ total, limit, unit }: Held): boolean {
  const within = unit === 'pH' ? pHSteps : unit === 'C' ? celsius : share * Math.abs(limit);
  return Math.abs(total - limit) <= within;
}

const percent = (total: number, limit: number): Held => ({ total, limit, unit: '%' });

/** The limit that decided, and that of the next more severe category, with the figure of each. */
function heldAgainst(because: Because, { basis }: Context): readonly Held[] {
  const decided = figureOf(because);
  const found: Held[] = decided?.limit ? [{ ...decided, limit: decided.limit }] : [];
  switch (because.kind) {
    case 'additivity':
    case 'shared-category': {
      const bounds = Object.values(basis.acuteToxicity.categories[because.key as AcuteKey]);
      const next = Math.max(...bounds.filter(bound => bound < because.ateMix));
      if (decided && Number.isFinite(next)) found.push({ ...decided, limit: next });
      break;
    }
    case 'flash-point':
      if (decided && because.above) found.push({ ...decided, limit: because.above.limit });
      break;
    case 'sum': {
      // Corrosives weigh ten times in the sum towards irritation; by themselves they may reach corrosion.
      const severe = {
        'corrosive-and-irritant': basis.skin.corrosive.percent,
        'damaging-and-irritating': basis.eye.damage.percent,
      }[because.rule as string];
      const heavy = because.terms.filter(({ weight }) => weight > 1);
      if (severe !== undefined && heavy.length > 0)
        found.push(
          percent(
            heavy.reduce((sum, { amount }) => sum + amount.value, 0),
            severe,
          ),
        );
      break;
    }
    case 'ingredients':
      for (const { amount, limit } of because.comparisons) found.push(percent(amount.value, limit.value));
      break;
    default:
  }
  return found;
}

/** A moderate pH close to those that give Category 1 of skin and eye (A.2.3.1.3, A.3.3.1.2; CLP and UN 3.2.3.1.2). */
function nearExtremePh({ mixture, basis }: Context): { figure: Held; cite: Provision } | null {
  const measured = mixture.properties.pH?.value;
  if (!measured) return null;
  const { acid, base, cite } = basis.skin.extremePh;
  const limit = measured.value > acid && measured.value < base ? [acid, base] : [];
  const close = limit.map((each): Held => ({ total: measured.value, limit: each, unit: 'pH' })).find(isClose);
  return close ? { figure: close, cite: ofHealth(basis, cite) } : null;
}

/**
 * Results whose figure lies close to the limit that decides or to the next more severe one, on every path; one warning
 * for a class, of the closest.
 * @param context at the upper ends of ranges.
 */
export function nearLimit(results: readonly ClassResult[], context: Context): Warning[] {
  const warnings: Warning[] = [];
  const byPh = nearExtremePh(context);
  for (const { class: name, route = null, because } of results) {
    const close = closest(heldAgainst(because, context));
    const isSkinOrEye = name === 'Skin Corr./Irrit.' || name === 'Eye Dam./Irrit.';
    if (close) warnings.push(warningOf(name, route, close, because.cites));
    else if (byPh && isSkinOrEye) warnings.push(warningOf(name, route, byPh.figure, [byPh.cite]));
  }
  return warnings;
}

/** Of the figures that are close to their limit the closest. */
function closest(held: readonly Held[]): Held | null {
  let least: Held | null = null;
  for (const each of held) if (isClose(each) && (!least || distance(each) < distance(least))) least = each;
  return least;
}

const distance = ({ total, limit }: Held): number => Math.abs(total - limit) / Math.abs(limit);

const warningOf = (
  name: string,
  route: ClassResult['route'] | null,
  { total, limit, unit }: Held,
  cites: readonly Provision[],
): Warning => ({
  id: 'near-limit',
  class: name,
  route: route ?? null,
  figure: { total, limit, unit },
  cites,
});
