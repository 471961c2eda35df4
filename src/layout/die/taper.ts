import type { Millimetres } from '../../quantity/length.ts';

/** A container whose diameter changes evenly over the height of its label panel. */
export interface Cone {
  readonly foot: Millimetres;
  readonly top: Millimetres;
  readonly height: Millimetres;
}

/** How a straight label sits on a cone, and the die that would sit without creases. */
export interface Taper {
  /** By how much the place of one edge is longer than that of the other. */
  readonly difference: Millimetres;
  /** Segment of a ring: outer radius at the wide end, and the angle that the label takes, in degrees. */
  readonly arc: { readonly outer: Millimetres; readonly inner: Millimetres; readonly degrees: number };
}

/**
 * Geometry of the frustum of a cone rolled out: with slant s the outer radius is s D / (D - d). A label as wide as w at
 * its wide edge covers w of it, and its narrow edge less in proportion.
 */
export function taperOf(
  { foot, top, height }: Cone,
  { width, height: high }: { readonly width: Millimetres; readonly height: Millimetres },
): Taper | null {
  const [wide, narrow] = [Math.max(foot, top), Math.min(foot, top)];
  if (wide === narrow) return null;
  const slant = Math.hypot(height, (wide - narrow) / 2);
  const outer = (slant * wide) / (wide - narrow);
  const inner = outer - high;
  const degrees = ((width / outer) * 180) / Math.PI;
  return { difference: (width * high) / outer, arc: { outer, inner, degrees } };
}
