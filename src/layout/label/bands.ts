import type { Millimetres } from '../../quantity/length.ts';
import { type Box, type Placed, rule } from './box.ts';
import { balancedColumns, flowOf } from './flow.ts';
import { footBlock } from './foot.ts';
import { hazardPanel } from './hazard-panel.ts';
import { identityAllowance, identityBlock } from './identity.ts';
import { once } from './once.ts';
import { gapOf, type Making } from './parts.ts';
import { above, below, type Room } from './placing.ts';

/** A label laid out: its blocks on the trim, and how it came out. */
export interface Composition {
  readonly placed: readonly Placed[];
  /** Height that is left over. */
  readonly slack: Millimetres;
  /** Width of the text columns. */
  readonly measure: Millimetres;
  /** Shortest column of text as part of the longest. */
  readonly balance: number;
  /** Right edge of the head of the label, where it does not reach over the whole width. */
  readonly headRight?: Millimetres;
}

export interface BandPlan {
  readonly columns: number;
  /** The supplier closes the flowing text instead of standing in the foot. */
  readonly supplierFlows: boolean;
  /** Distances of the first and the last band from upper and lower edge, as parts of the height. */
  readonly inset: readonly [number, number];
}

/**
 * Bands over the width that the die has at their height: identity, hazard panel, text in columns, foot. Null where
 * the die does not hold them.
 */
export function bands(making: Making, room: Room, plan: BandPlan): Composition | null {
  const { parts, measures } = making;
  const { identity, hazard, supplier } = parts.placed;
  const { height, width: across, overlap = 0 } = room.die;
  // Bands run over the whole label: it must be seen at once.
  if (parts.type?.front && across - overlap > parts.type.front) return null;
  const gap = gapOf(making);
  const placed: Placed[] = [];
  let top = measures.top + plan.inset[0] * height;
  const put = (
    make: (width: Millimetres) => Box | null,
    least: (width: Millimetres) => Millimetres = () => 0,
  ): boolean => {
    const block = below(room, top, make);
    if (!block) return false;
    placed.push(block);
    top = block.y + Math.max(block.box.height, least(block.box.width)) + gap;
    return true;
  };
  if (
    identity &&
    !put(
      width => once(making, `identity ${width}`, () => identityBlock(identity, width, making)),
      width => identityAllowance(identity, width, making),
    )
  )
    return null;
  if (hazard && !put(width => once(making, `hazard ${width}`, () => hazardPanel(hazard, width, making))))
    return null;

  const bottom = height - room.margin - plan.inset[1] * height;
  const flowing = plan.supplierFlows && supplier ? [...parts.flow, supplier] : parts.flow;
  const include = { supplier: !plan.supplierFlows, contents: true };
  const foot = above(room, bottom, width => footBlock(making, width, include));
  if (!foot) return null;
  let floor = foot.box.height > 0 ? foot.y - gap * 0.8 : bottom;
  if (foot.box.height > 0 && flowing.length > 0) {
    const line = above(room, floor, width => rule(width, measures.thin));
    if (!line) return null;
    placed.push(line);
    floor = line.y - gap * 0.8;
  }
  placed.push(foot);
  if (flowing.length === 0) {
    const slack = floor - top + gap;
    return slack < -1e-6 ? null : { placed, slack, measure: 0, balance: 1 };
  }
  const gutter = measures.gutter;
  for (const start of [top, ...(room.resume ?? []).filter(place => place > top)]) {
    const free = floor - start;
    const interval = free > 0 ? room.across(start, floor) : null;
    const width = interval ? (interval.to - interval.from - (plan.columns - 1) * gutter) / plan.columns : 0;
    if (!interval || width <= 0) continue;
    const limits = Array<number>(plan.columns).fill(free);
    const columns = balancedColumns(flowOf(flowing, making), { width, gutter, limits }, making);
    if (!columns) continue;
    placed.push({ box: columns.box, x: interval.from, y: start });
    const { heights } = columns;
    const full = heights.length === plan.columns;
    const balance = full ? Math.min(...heights) / Math.max(...heights) : 0;
    return { placed, slack: free - columns.box.height, measure: width, balance };
  }
  return null;
}
