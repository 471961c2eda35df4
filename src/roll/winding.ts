import type { Millimetres } from '../quantity/length.ts';

/**
 * Outer diameter of a web wound on a core. The side of the roll is a ring whose area is length times thickness:
 * D = sqrt(d^2 + 4 t L / pi).
 * @param core outer diameter of the core
 * @param length of the web
 * @param thickness of face, adhesive and liner together
 */
export const woundDiameter = (core: Millimetres, length: Millimetres, thickness: Millimetres): Millimetres =>
  Math.sqrt(core ** 2 + (4 * thickness * length) / Math.PI);

/** Length of web between a core and an outer diameter; 0 where the core is the larger. */
export const webLength = (core: Millimetres, outer: Millimetres, thickness: Millimetres): Millimetres =>
  outer <= core ? 0 : (Math.PI * (outer ** 2 - core ** 2)) / (4 * thickness);

/** Turns of the web between a core and an outer diameter. */
export const turns = (core: Millimetres, outer: Millimetres, thickness: Millimetres): number =>
  Math.max(0, (outer - core) / (2 * thickness));

/** Mass of a web in kilograms. @param density in g/cm3 */
export const webMass = (
  length: Millimetres,
  width: Millimetres,
  thickness: Millimetres,
  density: number,
): number => (length * width * thickness * density) / 1e6;
