import type { Millimetres } from '../quantity/length.ts';
import type { Rectangle } from './geometry.ts';
import type { EncodedMatrix } from './symbols.ts';

/** A two-dimensional symbol at its size; the origin is the upper left corner of its quiet zone, y downwards. */
export interface MatrixGeometry {
  readonly x: Millimetres;
  /** Whole box with quiet zones. */
  readonly width: Millimetres;
  readonly height: Millimetres;
  /** Dark modules, neighbours of a row as one rectangle. */
  readonly bars: readonly Rectangle[];
}

/**
 * Modules of a symbol at an X-dimension, all exact.
 * @param inset drawn inside each edge of a rectangle, for printers that paint every dot an edge touches; default 0
 * @throws RangeError where `x` is outside the range of the symbol
 */
export function matrixGeometry(
  { spec, rows }: EncodedMatrix,
  x: Millimetres,
  inset: Millimetres = 0,
): MatrixGeometry {
  const { min, max } = spec.x;
  if (x < min - 1e-9 || x > max + 1e-9)
    throw new RangeError(`${spec.name} takes an X-dimension of ${min} to ${max} mm, got ${x}`);
  const across = (count: number) => (count + 2 * spec.quietZone) * x;
  return {
    x,
    width: across(rows[0]!.length),
    height: across(rows.length),
    bars: rows.flatMap((row, at) =>
      runsOf(row).map(([from, to]) => ({
        x: (spec.quietZone + from) * x + inset,
        y: (spec.quietZone + at) * x + inset,
        width: (to - from) * x - 2 * inset,
        height: x - 2 * inset,
      })),
    ),
  };
}

/** Stretches of dark modules, first and past the last. */
function runsOf(row: readonly boolean[]): (readonly [number, number])[] {
  const runs: [number, number][] = [];
  for (const [at, dark] of row.entries()) {
    if (!dark) continue;
    const last = runs.at(-1);
    if (last?.[1] === at) last[1] = at + 1;
    else runs.push([at, at + 1]);
  }
  return runs;
}
