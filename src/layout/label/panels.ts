import type { Millimetres } from '../../quantity/length.ts';
import type { Composition } from './bands.ts';
import { type Box, empty, named, type Placed, rule } from './box.ts';
import { contentsBox } from './contents-box.ts';
import { balancedColumns, flowOf } from './flow.ts';
import { footBlock } from './foot.ts';
import { hazardPanel } from './hazard-panel.ts';
import { identityAllowance, identityBlock } from './identity.ts';
import { once } from './once.ts';
import { gapOf, type Making } from './parts.ts';
import type { Room } from './placing.ts';

/** A grid of equal columns: the front panel spans some, text fills the others. */
export interface PanelPlan {
  readonly columns: number;
  readonly front: number;
  /** How many of the last text columns the foot stands below; 0 where it stands below the front panel. */
  readonly foot: number;
}

/**
 * Front panel at the left with identity, hazard panel and net contents; text columns beside it; supplier, window
 * for the lot and bar code at the lower right. Null where the die does not hold them.
 */
export function panels(making: Making, room: Room, plan: PanelPlan): Composition | null {
  const { parts, measures } = making;
  const { die, margin } = room;
  const { panels: folds = 1 } = die;
  const full = room.across(die.height / 2, die.height / 2);
  if (!full) return null;
  // Folds lie in the middle of the gutters, and a margin is kept on both sides of them.
  const gutter = folds > 1 ? 2 * margin : measures.gutter * 1.4;
  const width = (full.to - full.from - (plan.columns - 1) * gutter) / plan.columns;
  if (width <= 0) return null;
  const span = (count: number) => count * width + (count - 1) * gutter;
  const left = (column: number) => full.from + column * (width + gutter);

  // What stands on the principal display panel is seen at once.
  if (parts.type?.front && span(plan.front) > parts.type.front) return null;
  const free = folds > 1 ? margin : (gutter - measures.thin) / 2;
  const place = { x: left(0), width: span(plan.front), free };
  const front = frontPanel(making, room, place, plan.foot === 0);
  if (!front) return null;
  const placed: Placed[] = [...front.placed];

  const footX = left(plan.columns - plan.foot);
  const footWidth = span(plan.foot);
  let foot: Placed | null = null;
  if (plan.foot > 0) {
    const box = footBlock(making, footWidth, { supplier: true, contents: false });
    const down = box && room.down(footX, footX + footWidth, box.fall);
    if (!box || !down) return null;
    foot = box.height > 0 ? { box, x: footX, y: down.to - box.height + box.fall } : null;
  }
  const gap = gapOf(making);
  const textColumns = plan.columns - plan.front;
  const tops: number[] = [];
  const limits: number[] = [];
  for (let at = 0; at < textColumns; at += 1) {
    const x = left(plan.front + at);
    const down = room.down(x, x + width);
    if (!down) return null;
    const floor = foot && at >= textColumns - plan.foot ? foot.y - gap * 1.6 - measures.thin : down.to;
    tops.push(Math.max(down.from, measures.top));
    limits.push(floor);
  }
  const top = Math.max(...tops);
  const heights = limits.map(floor => floor - top);
  if (Math.min(...heights) < 0) return null;
  const { supplier } = parts.placed;
  const flowing = plan.foot === 0 && supplier ? [...parts.flow, supplier] : parts.flow;
  const columns = balancedColumns(flowOf(flowing, making), { width, gutter, limits: heights }, making);
  if (!columns) return null;
  // A front panel beside nothing is no panel.
  if (columns.heights.length < textColumns - plan.foot || (columns.heights.length === 0 && !foot))
    return null;
  const textX = left(plan.front);
  if (columns.heights.length > 0) placed.push({ box: columns.box, x: textX, y: top });
  if (folds === 1) {
    const side = room.down(textX - gutter / 2, textX - gutter / 2);
    // No higher than the texts: above them stands the notice of a draft.
    const from = side && Math.max(side.from, top);
    if (side && from !== null && from < side.to)
      placed.push({ box: rule(measures.thin, side.to - from), x: textX - gutter / 2, y: from });
  }
  if (foot) {
    const over = columns.heights.length > textColumns - plan.foot;
    if (over) placed.push({ box: rule(footWidth, measures.thin), x: footX, y: foot.y - gap * 0.8 });
    placed.push(foot);
  }
  const tallest = Math.max(0, ...columns.heights);
  return {
    placed,
    slack: Math.min(front.slack, ...columns.heights.map((height, at) => heights[at]! - height)),
    measure: width,
    headRight: folds > 1 ? die.width / folds : textX - gutter / 2,
    balance: columns.heights.length === 0 ? 1 : Math.min(...columns.heights) / tallest,
  };
}

interface Front {
  readonly placed: readonly Placed[];
  readonly slack: Millimetres;
}

function frontPanel(
  making: Making,
  room: Room,
  { x, width, free }: { x: Millimetres; width: Millimetres; free: Millimetres },
  withFoot: boolean,
): Front | null {
  const { parts, measures } = making;
  const { identity, hazard, contents } = parts.placed;
  const down = room.down(x, x + width);
  if (!down) return null;
  const gap = gapOf(making);
  const placed: Placed[] = [];
  let top = Math.max(down.from, measures.top);
  const put = (box: Box | null, least = 0): boolean => {
    if (!box) return false;
    placed.push({ box, x, y: top });
    top += Math.max(box.height, least) + gap;
    return true;
  };
  if (
    identity &&
    !put(
      once(making, `identity ${width}`, () => identityBlock(identity, width, making)),
      identityAllowance(identity, width, making),
    )
  )
    return null;
  if (hazard && !put(once(making, `hazard ${width}`, () => hazardPanel(hazard, width, making)))) return null;
  const text = contents ? contentsBox(contents, width, making) : empty;
  const bottom = withFoot
    ? footBlock(making, width, { supplier: false, contents: true }, free)
    : text && contents
      ? named(contents.role, text)
      : text;
  if (!bottom) return null;
  const floor = room.down(x, x + width, bottom.fall);
  if (!floor) return null;
  const y = floor.to - bottom.height + bottom.fall;
  const slack = y - top;
  if (slack < -1e-6) return null;
  if (bottom.height > 0) placed.push({ box: bottom, x, y });
  return { placed, slack };
}
