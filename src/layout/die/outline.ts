import type { Millimetres } from '../../quantity/length.ts';
import type { Segment } from '../frame.ts';
import type { Die } from './die.ts';
import { insetEllipse } from './inset-ellipse.ts';

/** From and to, in millimetres from the upper left corner of the trim. */
export interface Interval {
  readonly from: Millimetres;
  readonly to: Millimetres;
}

/** The cut of a label as the layout sees it: how much room there is at a distance from the cut. */
export interface Outline {
  readonly die: Die;
  /** Room from side to side over the whole height of a band that keeps a distance from the cut; null where none is. */
  across(top: Millimetres, bottom: Millimetres, distance: Millimetres): Interval | null;
  /** Room from top to bottom over the whole width of a column. */
  down(left: Millimetres, right: Millimetres, distance: Millimetres): Interval | null;
  /** The cut itself. */
  readonly segments: readonly Segment[];
}

/** Half the room at a distance from the middle line of a convex shape; null beyond its end. */
type HalfWidth = (offset: Millimetres, distance: Millimetres) => Millimetres | null;

const rounded =
  (half: Millimetres, otherHalf: Millimetres, radius: Millimetres): HalfWidth =>
  (offset, distance) => {
    const [reach, side] = [otherHalf - distance, half - distance];
    if (offset > reach + 1e-9 || side <= 0) return null;
    // The parallel to a rounded corner is a corner of smaller radius.
    const r = Math.max(0, radius - distance);
    const into = Math.max(0, offset - (reach - r));
    return side - r + Math.sqrt(Math.max(0, r * r - into * into));
  };

/** The outline of a die: rectangle with rounded corners, or oval. A radius beyond half the short side is cut to it. */
export function outlineOf(die: Die): Outline {
  const { width, height, overlap = 0 } = die;
  const [a, b] = [width / 2, height / 2];
  const r = Math.min(Math.max(0, die.cornerRadius), a, b);
  const oval = die.shape === 'oval';
  const wide: HalfWidth = oval ? insetEllipse(a, b) : rounded(a, b, r);
  const high: HalfWidth = oval ? insetEllipse(b, a) : rounded(b, a, r);
  // The shape is convex: what is free at both edges of a band is free between them.
  const room = (
    half: HalfWidth,
    middle: number,
    other: number,
    from: number,
    to: number,
    distance: number,
  ) => {
    const halves = [from, to].map(place => half(Math.abs(place - other), distance));
    const [first, second] = halves;
    if (first === null || second === null || first === undefined || second === undefined) return null;
    const least = Math.min(first, second);
    return least > 0 ? { from: middle - least, to: middle + least } : null;
  };
  return {
    die,
    across(top, bottom, distance) {
      const found = room(wide, a, b, top, bottom, distance);
      if (!found || overlap <= 0) return found;
      const to = Math.min(found.to, width - overlap - distance);
      return to > found.from ? { from: found.from, to } : null;
    },
    down: (left, right, distance) => room(high, b, a, left, right, distance),
    segments: oval ? ellipse(a, b) : roundedRectangle(width, height, r),
  };
}

/** Length of the control lines of a quarter circle of radius 1. */
const CIRCLE = (4 / 3) * Math.tan(Math.PI / 8);

function roundedRectangle(width: Millimetres, height: Millimetres, r: Millimetres): readonly Segment[] {
  const k = r * (1 - CIRCLE);
  return [
    ['M', r, 0],
    ['L', width - r, 0],
    ['C', width - k, 0, width, k, width, r],
    ['L', width, height - r],
    ['C', width, height - k, width - k, height, width - r, height],
    ['L', r, height],
    ['C', k, height, 0, height - k, 0, height - r],
    ['L', 0, r],
    ['C', 0, k, k, 0, r, 0],
    ['Z'],
  ];
}

function ellipse(a: Millimetres, b: Millimetres): readonly Segment[] {
  const [p, q] = [a * CIRCLE, b * CIRCLE];
  const [width, height] = [2 * a, 2 * b];
  return [
    ['M', a, 0],
    ['C', a + p, 0, width, b - q, width, b],
    ['C', width, b + q, a + p, height, a, height],
    ['C', a - p, height, 0, b + q, 0, b],
    ['C', 0, b - q, a - p, 0, a, 0],
    ['Z'],
  ];
}
