import doubts from '../../../hazard-data/measured-doubts.json' with { type: 'json' };
import type { AcuteKey } from '../../reference/thresholds.ts';
import { acuteCategories } from '../acute-categories.ts';
import type { ClassResult, Context } from '../context.ts';
import type { Because } from '../facts/because.ts';
import { type Figure, figureOf } from '../facts/figure.ts';
import { ofHealth, type Provision } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';

type Held = Figure & { readonly limit: number };

const { share, pH: pHSteps, celsius } = doubts.near;

/** Whether a figure lies close to a limit: a share of it, or a number of degrees or steps of pH (common practice). */
function isClose(total: number, limit: number, unit: Held['unit']): boolean {
  const within = unit === 'pH' ? pHSteps : unit === 'C' ? celsius : share * Math.abs(limit);
  return Math.abs(total - limit) <= within;
}

/** Of the figures that are close to their limit the closest; hears of each. */
class Closest {
  found: Held | null = null;
  #distance = Number.POSITIVE_INFINITY;

  hear(total: number, limit: number, unit: Held['unit']): void {
    if (!isClose(total, limit, unit)) return;
    const distance = Math.abs(total - limit) / Math.abs(limit);
    if (this.found && distance >= this.#distance) return;
    this.found = { total, limit, unit };
    this.#distance = distance;
  }
}

/** The limit that decided, and that of the next more severe category, with the figure of each. */
function closestIn(because: Because, { basis }: Context): Held | null {
  const decided = figureOf(because);
  if (!decided) return null;
  const closest = new Closest();
  if (decided.limit) closest.hear(decided.total, decided.limit, decided.unit);
  switch (because.kind) {
    case 'additivity':
    case 'shared-category': {
      const bounds = basis.acuteToxicity.categories[because.key as AcuteKey];
      let next = Number.NEGATIVE_INFINITY;
      for (const category of acuteCategories) {
        const bound = bounds[category];
        if (bound !== undefined && bound < because.ateMix && bound > next) next = bound;
      }
      if (Number.isFinite(next)) closest.hear(decided.total, next, decided.unit);
      break;
    }
    case 'flash-point':
      if (because.above) closest.hear(decided.total, because.above.limit, decided.unit);
      break;
    case 'sum': {
      // Corrosives weigh ten times in the sum towards irritation; by themselves they may reach corrosion.
      const severe = {
        'corrosive-and-irritant': basis.skin.corrosive.percent,
        'damaging-and-irritating': basis.eye.damage.percent,
      }[because.rule as string];
      const heavy = because.terms.filter(({ weight }) => weight > 1);
      if (severe !== undefined && heavy.length > 0)
        closest.hear(
          heavy.reduce((sum, { amount }) => sum + amount.value, 0),
          severe,
          '%',
        );
      break;
    }
    case 'ingredients':
      for (const { amount, limit } of because.comparisons) closest.hear(amount.value, limit.value, '%');
      break;
    default:
  }
  return closest.found;
}

/** A moderate pH close to those that give Category 1 of skin and eye (A.2.3.1.3, A.3.3.1.2; CLP and UN 3.2.3.1.2). */
function nearExtremePh({ mixture, basis }: Context): { figure: Held; cite: Provision } | null {
  const measured = mixture.properties.pH?.value;
  if (!measured) return null;
  const { acid, base, cite } = basis.skin.extremePh;
  const limit = measured.value > acid && measured.value < base ? [acid, base] : [];
  const close = limit.find(each => isClose(measured.value, each, 'pH'));
  if (close === undefined) return null;
  return { figure: { total: measured.value, limit: close, unit: 'pH' }, cite: ofHealth(basis, cite) };
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
    const close = closestIn(because, context);
    const isSkinOrEye = name === 'Skin Corr./Irrit.' || name === 'Eye Dam./Irrit.';
    if (close) warnings.push(warningOf(name, route, close, because.cites));
    else if (byPh && isSkinOrEye) warnings.push(warningOf(name, route, byPh.figure, [byPh.cite]));
  }
  return warnings;
}

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
