import type { Outline } from '../die/outline.ts';
import type { Stock } from '../stock.ts';
import type { BandPlan } from './bands.ts';
import type { PanelPlan } from './panels.ts';
import { hasFixed } from './red-frames.ts';

/** A way to arrange the label. */
export type Plan =
  | { readonly kind: 'bands'; readonly band: BandPlan }
  | { readonly kind: 'panels'; readonly grid: PanelPlan };

/** Distances of the bands from the edges of a die without straight sides, as parts of its height. */
const INSETS = [0.03, 0.08, 0.14] as const;

/** A die whose sides are straight for less than this part is laid out as a round one. */
const STRAIGHT = 0.6;

/** Whether a die is laid out as a round one. */
export const isRound = ({ die }: Outline): boolean => {
  const short = Math.min(die.width, die.height);
  return die.shape === 'oval' || 2 * die.cornerRadius > (1 - STRAIGHT) * short;
};

/** All arrangements that are tried for a die. */
export function plansFor(outline: Outline, stock: Stock): readonly Plan[] {
  const { panels: folds = 1 } = outline.die;
  if (folds > 1) {
    return [1, 0].map(foot => ({ kind: 'panels', grid: { columns: folds, front: 1, foot } }));
  }
  const insets: (readonly [number, number])[] = isRound(outline)
    ? INSETS.flatMap(top => INSETS.map(bottom => [top, bottom] as const))
    : [[0, 0]];
  const plans: Plan[] = [];
  for (const inset of insets)
    for (const columns of [1, 2, 3, 4])
      for (const supplierFlows of [false, true])
        plans.push({ kind: 'bands', band: { columns, supplierFlows, inset } });
  // What stands at a fixed place stays there: blocks go round it from above to below.
  if (hasFixed(stock)) return plans;
  for (let columns = 2; columns <= 6; columns += 1)
    for (let front = 1; front <= Math.ceil(columns / 2); front += 1)
      for (let foot = 0; foot <= Math.min(2, columns - front); foot += 1)
        plans.push({ kind: 'panels', grid: { columns, front, foot } });
  return plans;
}
