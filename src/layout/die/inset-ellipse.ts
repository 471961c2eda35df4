import type { Millimetres } from '../../quantity/length.ts';

interface Point {
  readonly x: Millimetres;
  readonly y: Millimetres;
}

/** Points of a quarter; the error of a chord between two of them is some micrometres on a die of half a metre. */
const POINTS = 720;

/**
 * The quarter of a curve inside an ellipse with half-axes `a` and `b`, from the end of `a` on. The parallel to an
 * ellipse is no ellipse: its points lie on the normals, (a cos t - d b cos t / n, b sin t - d a sin t / n) with
 * n = sqrt(b² cos² t + a² sin² t).
 */
function parallel(a: Millimetres, b: Millimetres, distance: Millimetres): readonly Point[] {
  const points: Point[] = [];
  for (let at = 0; at <= POINTS; at += 1) {
    const t = (at / POINTS) * (Math.PI / 2);
    const n = Math.hypot(b * Math.cos(t), a * Math.sin(t));
    const point = { x: Math.cos(t) * (a - (distance * b) / n), y: Math.sin(t) * (b - (distance * a) / n) };
    // Near a pointed end the normals cross: the curve begins where it has left the axis.
    if (point.y >= (points.at(-1)?.y ?? 0)) points.push(point);
  }
  return points;
}

/** Half the width of an ellipse at an offset from its long axis and a distance inside it; null beyond its end. */
export function insetEllipse(
  a: Millimetres,
  b: Millimetres,
): (offset: Millimetres, distance: Millimetres) => Millimetres | null {
  const curves = new Map<Millimetres, readonly Point[]>();
  return (offset, distance) => {
    if (offset > b - distance || distance >= a) return null;
    const curve = curves.get(distance) ?? parallel(a, b, distance);
    curves.set(distance, curve);
    let [low, high] = [0, curve.length - 1];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (curve[middle]!.y < offset) low = middle + 1;
      else high = middle;
    }
    const x = curve[low]?.x ?? 0;
    return x > 0 ? x : null;
  };
}
