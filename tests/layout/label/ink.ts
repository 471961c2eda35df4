import type { Die } from '../../../src/layout/die/die.ts';
import type { FrameItem } from '../../../src/layout/frame.ts';
import { toMillimetres } from '../../../src/quantity/length.ts';
import type { FontLibrary } from '../../../src/text/glyph-run.ts';

export interface Extent {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

type Point = readonly [number, number];

/** Every end and control point of what an item prints: the ink lies inside their hull. */
export function inkPoints(item: FrameItem, fonts: FontLibrary): readonly Point[] {
  if (item.kind === 'path') {
    const half = (item.strokeWidth ?? 0) / 2;
    return item.segments.flatMap(([, ...numbers]) => {
      const points: Point[] = [];
      for (let at = 0; at < numbers.length; at += 2) {
        const [x, y] = [numbers[at]!, numbers[at + 1]!];
        points.push([x - half, y - half], [x + half, y - half], [x - half, y + half], [x + half, y + half]);
      }
      return points;
    });
  }
  if (item.kind === 'art') return [];
  const em = toMillimetres(item.size) / 1000;
  const angle = ((item.rotate ?? 0) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return fonts.outline(item.run.text, item.run.face).flatMap(([, ...numbers]) => {
    const points: Point[] = [];
    for (let at = 0; at < numbers.length; at += 2) {
      const [along, up] = [numbers[at]! * em, numbers[at + 1]! * em];
      points.push([item.x + along * cos - up * sin, item.y - along * sin - up * cos]);
    }
    return points;
  });
}

export function extentOf(points: readonly Point[]): Extent {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** How far two extents lie over each other, in the direction in which they do least. */
export const overlapOf = (a: Extent, b: Extent): number =>
  Math.min(
    Math.min(a.right, b.right) - Math.max(a.left, b.left),
    Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top),
  );

/**
 * Least distance of points inside a die from its cut, negative outside: for a rectangle with rounded corners the
 * usual signed distance, for an ellipse the least over its tangents, of which the shape is the intersection.
 */
export function leastDepth({ width, height, cornerRadius, shape }: Die, points: readonly Point[]): number {
  const [a, b] = [width / 2, height / 2];
  let least = Number.POSITIVE_INFINITY;
  for (const [x, y] of points) {
    const [dx, dy] = [Math.abs(x - a), Math.abs(y - b)];
    if (shape === 'oval') {
      for (const [cos, sin] of DIRECTIONS)
        least = Math.min(least, Math.hypot(a * cos, b * sin) - dx * cos - dy * sin);
    } else {
      const [qx, qy] = [dx - (a - cornerRadius), dy - (b - cornerRadius)];
      const outside = Math.hypot(Math.max(qx, 0), Math.max(qy, 0));
      least = Math.min(least, cornerRadius - (outside + Math.min(Math.max(qx, qy), 0)));
    }
  }
  return least;
}

const DIRECTIONS = Array.from({ length: 181 }, (_, at) => {
  const angle = (at / 2 / 180) * Math.PI;
  return [Math.cos(angle), Math.sin(angle)] as const;
});
