import { type Box, empty, move, named, overlay, rule, stack } from './box.ts';
import { balancedColumns, columnsBox } from './columns.ts';
import { footBlock } from './foot.ts';
import { hazardPanel } from './hazard-panel.ts';
import { identityBlock } from './identity.ts';
import type { Arrangement } from './parts.ts';
import { draftStrip, flowLines, runningSection } from './small-blocks.ts';

/** How much of the space left over goes to one gap, in gaps. */
const LOOSEN = 0.9;

/**
 * Bands over the whole width: identity, hazard panel, text in columns, foot. Null where the height does not hold
 * them.
 * @throws TooNarrow
 */
export function bands(arrangement: Arrangement, columns: number): Box | null {
  const { parts, measures, width, height } = arrangement;
  const { placed } = parts;
  const { gap, gutter } = measures;
  const head: Box[] = [];
  if (placed.draft) head.push(draftStrip(placed.draft, width, arrangement));
  if (placed.identity) head.push(identityBlock(placed.identity, width, arrangement));
  if (placed.hazard) head.push(hazardPanel(placed.hazard, width, arrangement, parts.profile.pictogram.frame));
  const columnWidth = (width - (columns - 1) * gutter * 1.3) / columns;
  const inline = columns > 1 && arrangement.whole;
  const across = inline && placed.supplier ? runningSection(placed.supplier, width, arrangement) : empty;
  // What follows columns of text must reach under the last of them, or a program that reads the file back would
  // go on from the first column into the foot.
  if (across.height > 0 && across.width < (columns - 1) * (columnWidth + gutter * 1.3)) return null;
  const cells = footBlock(arrangement, width, { supplier: !inline, contents: true });
  const foot = stack([across, cells], gap * 1.4);
  const footRule = foot.height > 0 && parts.flow.length > 0 ? rule(width, measures.thin) : empty;
  const lines = flowLines(parts.flow, columnWidth, arrangement);
  const draftGap = placed.draft ? gap * 0.6 : 0;
  const ruleRoom = footRule.height > 0 ? footRule.height + gap * 0.8 : 0;
  const fixed = head.reduce((sum, box) => sum + box.height + gap, draftGap) + ruleRoom + foot.height;
  const room = height - fixed - (foot.height > 0 && lines.length > 0 ? gap * 0.8 : 0);
  if (room < 0) return null;
  const filled = balancedColumns(lines, Array(columns).fill(room), arrangement.whole);
  if (!filled) return null;
  const text = named('text', columnsBox(filled, columnWidth, gutter * 1.3));
  const loose = Math.min((room - text.height) / (head.length + 1), gap * LOOSEN);
  const placedBoxes: Box[] = [];
  let y = 0;
  for (const [at, box] of head.entries()) {
    placedBoxes.push(move(box, 0, y));
    y += box.height + gap + (at === 0 && placed.draft ? draftGap : loose);
  }
  placedBoxes.push(move(text, 0, y));
  const footTop = height - foot.height;
  placedBoxes.push(move(footRule, 0, footTop - ruleRoom), move(foot, 0, footTop));
  return overlay(placedBoxes, width, height);
}
