/** A point of the page in millimetres from the lower left corner of the trim. */
export type Point = readonly [number, number];

/** Left, bottom, right, top. */
export type Extent = readonly [number, number, number, number];

export const extentOf = (points: readonly Point[]): Extent => extentOfAll([points]);

/** The extent of several outlines. */
export function extentOfAll(outlines: readonly (readonly Point[])[]): Extent {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const points of outlines)
    for (const point of points) {
      left = Math.min(left, point[0]);
      right = Math.max(right, point[0]);
      bottom = Math.min(bottom, point[1]);
      top = Math.max(top, point[1]);
    }
  return [left, bottom, right, top];
}

/** How far two extents lie over each other in the direction in which they do least; negative where they are apart. */
export const overlap = (a: Extent, b: Extent): number =>
  Math.min(Math.min(a[2], b[2]) - Math.max(a[0], b[0]), Math.min(a[3], b[3]) - Math.max(a[1], b[1]));

const CURVE_STEPS = 64;

/** Points along a Bézier curve, its start left out. */
export function alongCurve(from: Point, one: Point, two: Point, to: Point): Point[] {
  const points: Point[] = [];
  for (let step = 1; step <= CURVE_STEPS; step += 1) {
    const t = step / CURVE_STEPS;
    const u = 1 - t;
    const [a, b, c, d] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
    points.push([
      a * from[0] + b * one[0] + c * two[0] + d * to[0],
      a * from[1] + b * one[1] + c * two[1] + d * to[1],
    ]);
  }
  return points;
}

/** Distance of a point from a closed polygon, negative outside. */
export function depthIn(polygon: readonly Point[], [x, y]: Point): number {
  let inside = false;
  let least = Number.POSITIVE_INFINITY;
  for (let at = 0; at < polygon.length; at += 1) {
    const [ax, ay] = polygon[at]!;
    const [bx, by] = polygon[at + 1 < polygon.length ? at + 1 : 0]!;
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
    const [dx, dy] = [bx - ax, by - ay];
    const length = dx * dx + dy * dy;
    const t = length === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / length));
    const [awayX, awayY] = [x - ax - t * dx, y - ay - t * dy];
    least = Math.min(least, awayX * awayX + awayY * awayY);
  }
  return inside ? Math.sqrt(least) : -Math.sqrt(least);
}
