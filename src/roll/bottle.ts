import type { Millimetres } from '../quantity/length.ts';
import practice from './practice.json' with { type: 'json' };

/** How the ends of a label that goes all round meet. */
export type Ends = { readonly kind: 'overlap' | 'gap'; readonly by: Millimetres };

/** Sizes of a label for a cylinder, in millimetres. */
export interface BottleLabel {
  readonly circumference: Millimetres;
  /** Full wrap: circumference with the overlap or without the gap. */
  readonly wrap: { readonly width: Millimetres; readonly ends: Ends };
  /** Tallest label on the straight panel. */
  readonly height: Millimetres | null;
  /** Arc that is seen at once from the front. */
  readonly oneView: Millimetres;
  /** By how much the circumference varies with the diameter of the bottle. */
  readonly variation: Millimetres;
}

/** How a label of a pack sits on its bottle. */
export interface LabelOnBottle {
  /** Share of the circumference that the label covers. */
  readonly covers: number;
  /** Overlap where positive, gap where negative. */
  readonly overlap: Millimetres;
  readonly problems: readonly ('taller-than-panel' | 'close-to-panel' | 'thin-overlap' | 'wider-than-wrap')[];
}

/** The ends as the trade makes them where nothing else is said. */
export const usualEnds = (kind: Ends['kind']): Ends => ({
  kind,
  by: kind === 'overlap' ? practice.overlap.usual : practice.wrapGap.usual,
});

/**
 * Sizes of a label for a bottle.
 * @param diameter of the cylinder
 * @param panelHeight straight part that takes a label, or null where it is unknown
 */
export function bottleLabel(diameter: Millimetres, panelHeight: Millimetres | null, ends: Ends): BottleLabel {
  const circumference = Math.PI * diameter;
  return {
    circumference,
    wrap: { width: circumference + (ends.kind === 'overlap' ? ends.by : -ends.by), ends },
    height: panelHeight === null ? null : Math.max(0, panelHeight - practice.panelMargin.value),
    oneView: circumference * practice.oneView.share,
    variation: Math.PI * practice.diameterTolerance.value,
  };
}

/** How a label of a given size sits on the bottle. */
export function labelOnBottle(
  label: { readonly width: Millimetres; readonly height: Millimetres },
  bottle: BottleLabel,
  panelHeight: Millimetres | null,
): LabelOnBottle {
  const overlap = label.width - bottle.circumference;
  const problems: LabelOnBottle['problems'][number][] = [];
  if (panelHeight !== null && label.height > panelHeight) problems.push('taller-than-panel');
  else if (bottle.height !== null && label.height > bottle.height) problems.push('close-to-panel');
  if (overlap > practice.overlap.most) problems.push('wider-than-wrap');
  else if (overlap > 0 && overlap < bottle.variation) problems.push('thin-overlap');
  return { covers: label.width / bottle.circumference, overlap, problems };
}
