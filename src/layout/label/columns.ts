import type { Millimetres } from '../../quantity/length.ts';
import { type Box, move, overlay } from './box.ts';
import { linesBox, type SetLine } from './text-block.ts';

const TOLERANCE = 1e-9;

/**
 * Fills columns of given heights with lines in order; null where they do not all fit. A heading stays with its
 * text, and no single line of a longer paragraph stands alone at the end or the head of a column.
 * @param whole no paragraph is split
 */
export function fillColumns(
  lines: readonly SetLine[],
  heights: readonly Millimetres[],
  whole: boolean,
): readonly (readonly SetLine[])[] | null {
  const columns: SetLine[][] = [];
  let next = 0;
  for (const height of heights) {
    const most = linesThatFit(lines, next, height);
    const end = breakBefore(lines, next, most, whole);
    columns.push(lines.slice(next, end));
    next = end;
  }
  return next === lines.length ? columns : null;
}

function linesThatFit(lines: readonly SetLine[], start: number, height: Millimetres): number {
  let baseline = 0;
  let end = start;
  for (let at = start; at < lines.length; at += 1) {
    const line = lines[at]!;
    baseline += at === start ? line.rise : line.leading + line.before;
    if (baseline + line.fall > height + TOLERANCE) break;
    end = at + 1;
  }
  return end;
}

/** The last place not after `most` at which the text may go on in the next column. */
function breakBefore(lines: readonly SetLine[], start: number, most: number, whole: boolean): number {
  if (most >= lines.length) return lines.length;
  for (let end = most; end > start; end -= 1) {
    const last = lines[end - 1]!;
    const head = lines[end]!;
    if (last.paragraph.style === 'heading') continue;
    if (partsShortList(lines, end)) continue;
    const parts = head.at > 0;
    if (parts && head.of > 3 && (head.at === 1 || head.at === head.of - 1)) continue;
    if (parts && (whole || head.of <= 3)) continue;
    return end;
  }
  return start;
}

/** Whether a break would leave the first item of a list with the heading alone, or the last item by itself. */
function partsShortList(lines: readonly SetLine[], end: number): boolean {
  const isItem = (line: SetLine | undefined) => line?.paragraph.style === 'item';
  if (!isItem(lines[end - 1]) || !isItem(lines[end])) return false;
  const { paragraph } = lines[end]!;
  const before = lines.slice(0, end).findLast(line => line.paragraph !== paragraph)!;
  const beforeThat = lines
    .slice(0, end)
    .findLast(line => ![paragraph, before.paragraph].includes(line.paragraph));
  const after = lines.slice(end).find(line => line.paragraph !== paragraph);
  return !isItem(beforeThat) || !isItem(after);
}

/** The lowest columns that hold the lines within their limits, so that all end at about one height; null if none. */
export function balancedColumns(
  lines: readonly SetLine[],
  limits: readonly Millimetres[],
  whole: boolean,
): readonly (readonly SetLine[])[] | null {
  const fill = (height: Millimetres) =>
    fillColumns(
      lines,
      limits.map(limit => Math.min(limit, height)),
      whole,
    );
  let high = Math.max(0, ...limits);
  let best = fill(high);
  if (!best) return null;
  let low = 0;
  for (let step = 0; step < 14; step += 1) {
    const middle = (low + high) / 2;
    const filled = fill(middle);
    if (filled) {
      best = filled;
      high = middle;
    } else low = middle;
  }
  return best;
}

/** Columns side by side at a pitch. */
export function columnsBox(
  columns: readonly (readonly SetLine[])[],
  width: Millimetres,
  gutter: Millimetres,
): Box {
  const boxes = columns.map((lines, at) => move(linesBox(lines, width), at * (width + gutter), 0));
  const height = Math.max(0, ...columns.map(lines => linesBox(lines).height));
  return overlay(boxes, columns.length * (width + gutter) - gutter, height);
}
