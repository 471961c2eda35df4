import { EDGE_INSET } from '../barcode/printer-dots.ts';
import type { Millimetres } from '../quantity/length.ts';
import type { FrameItem, PathItem, Segment } from './frame.ts';

/**
 * Puts the rules and windows of a label on the dots of a printer, so that a raster paints each with as many dots
 * wherever it lies; bars are laid there already.
 */
export const ontoDots = (items: readonly FrameItem[], dot: Millimetres): readonly FrameItem[] =>
  items.map(item => (item.kind === 'path' && item.tag === 'layout' ? snapped(item, dot) : item));

function snapped(item: PathItem, dot: Millimetres): PathItem {
  const corners = rectangleOf(item.segments);
  if (!corners) return item;
  const [left, top, right, bottom] = corners;
  if (item.stroke) {
    const dots = Math.max(1, Math.round((item.strokeWidth ?? 0) / dot));
    // The middle of an odd number of dots lies between two of their edges.
    const half = (dots % 2) / 2;
    const on = (length: number) => (Math.round(length / dot - half) + half) * dot;
    return {
      ...item,
      strokeWidth: (dots - 2 * EDGE_INSET) * dot,
      segments: closed(on(left), on(top), on(right), on(bottom)),
    };
  }
  const span = (from: number, to: number) => {
    const first = Math.round(from / dot);
    const last = first + Math.max(1, Math.round((to - from) / dot));
    return [(first + EDGE_INSET) * dot, (last - EDGE_INSET) * dot] as const;
  };
  const [x, past] = span(left, right);
  const [y, below] = span(top, bottom);
  return { ...item, segments: closed(x, y, past, below) };
}

const closed = (
  left: Millimetres,
  top: Millimetres,
  right: Millimetres,
  bottom: Millimetres,
): readonly Segment[] => [
  ['M', left, top],
  ['L', right, top],
  ['L', right, bottom],
  ['L', left, bottom],
  ['Z'],
];

/** Left, top, right and bottom of a single rectangle parallel to the edges; null for another path. */
function rectangleOf(segments: readonly Segment[]): readonly [number, number, number, number] | null {
  const points = segments.flatMap(([name, x, y]) => (name === 'M' || name === 'L' ? [[x, y] as const] : []));
  if (points.length !== 4 || segments.length !== 5) return null;
  const xs = points.map(([x]) => x as number);
  const ys = points.map(([, y]) => y as number);
  const box = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)] as const;
  const at = (value: number, one: number, other: number) =>
    Math.abs(value - one) < 1e-6 || Math.abs(value - other) < 1e-6;
  return xs.every(x => at(x, box[0], box[2])) && ys.every(y => at(y, box[1], box[3])) ? box : null;
}
