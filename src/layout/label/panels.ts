import type { Millimetres } from '../../quantity/length.ts';
import { type Box, empty, move, named, overlay, rule, stack } from './box.ts';
import { balancedColumns } from './columns.ts';
import { footBlock } from './foot.ts';
import { hazardPanel } from './hazard-panel.ts';
import { identityBlock } from './identity.ts';
import type { Arrangement } from './parts.ts';
import { draftStrip, flowLines, textSection } from './small-blocks.ts';
import { linesBox } from './text-block.ts';

/** A grid of equal columns: the front panel spans some, text fills the others. */
export interface Grid {
  readonly columns: number;
  readonly front: number;
  /** How many of the last text columns the foot stands below; 0 where it stands below the front panel. */
  readonly foot: number;
}

/**
 * Front panel at the left with identity, hazard panel and net contents; text columns beside it; supplier, window
 * for the lot and bar code at the lower right. Null where the height does not hold them.
 * @throws TooNarrow
 */
export function panels(arrangement: Arrangement, { columns, front, foot: footSpan }: Grid): Box | null {
  const { parts, measures, width } = arrangement;
  const gutter = measures.gutter * 1.6;
  const columnWidth = (width - (columns - 1) * gutter) / columns;
  const span = (count: number) => count * columnWidth + (count - 1) * gutter;
  const left = (column: number) => column * (columnWidth + gutter);

  const strip = parts.placed.draft ? draftStrip(parts.placed.draft, width, arrangement) : empty;
  const top = strip.height > 0 ? strip.height + measures.gap * 1.5 : 0;
  const height = arrangement.height - top;
  const frontBox = frontPanel(arrangement, span(front), height, footSpan === 0);
  if (!frontBox) return null;

  const footBox =
    footSpan === 0 ? empty : footBlock(arrangement, span(footSpan), { supplier: true, contents: false });
  const footRule = footSpan === 0 ? empty : rule(span(footSpan), measures.thin);
  const footRoom = footBox.height > 0 ? footBox.height + measures.gap * 1.6 + footRule.height : 0;
  const textColumns = columns - front;
  const limits = Array.from({ length: textColumns }, (_, at) =>
    at >= textColumns - footSpan ? height - footRoom : height,
  );
  if (Math.min(...limits) < 0) return null;
  const { supplier } = parts.placed;
  const flow = footSpan === 0 && supplier ? [...parts.flow, supplier] : parts.flow;
  const filled = balancedColumns(flowLines(flow, columnWidth, arrangement), limits, arrangement.whole);
  if (!filled) return null;

  const boxes: Box[] = [strip, move(frontBox, 0, top)];
  for (const [at, lines] of filled.entries()) {
    const x = left(front + at);
    if (lines.length > 0) boxes.push(move(named('text', linesBox(lines, columnWidth)), x, top));
  }
  boxes.push(move(rule(measures.thin, height), left(front) - gutter / 2 - measures.thin / 2, top));
  const footX = left(columns - footSpan);
  const footY = top + height - footBox.height;
  boxes.push(move(footBox, footX, footY));
  if (footBox.height > 0) boxes.push(move(footRule, footX, footY - measures.gap * 0.8 - footRule.height));
  return overlay(boxes, width, arrangement.height);
}

function frontPanel(
  arrangement: Arrangement,
  width: Millimetres,
  height: Millimetres,
  withFoot: boolean,
): Box | null {
  const { parts, measures } = arrangement;
  const { identity, hazard, contents } = parts.placed;
  const boxes: Box[] = [];
  if (identity) boxes.push(identityBlock(identity, width, arrangement));
  if (hazard) boxes.push(hazardPanel(hazard, width, arrangement, parts.profile.pictogram.frame));
  const bottom = withFoot
    ? footBlock(arrangement, width, { supplier: false, contents: true })
    : textSection(contents, width, arrangement);
  const tight = stack(boxes, measures.gap);
  const used = tight.height + (bottom.height > 0 ? bottom.height + measures.gap : 0);
  if (used > height) return null;
  const loose = Math.min((height - used) / 2, measures.gap);
  return overlay(
    [stack(boxes, measures.gap + loose), move(bottom, 0, height - bottom.height)],
    width,
    height,
  );
}
