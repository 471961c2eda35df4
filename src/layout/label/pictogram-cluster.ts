import type { Millimetres } from '../../quantity/length.ts';
import { type Box, empty, overlay } from './box.ts';
import type { PictogramFigure } from './content.ts';
import { type FrameStyle, pictogramBox } from './pictogram.ts';

/** Gap between neighbouring pictograms as part of their size. */
const GAP = 0.05;

interface Place {
  readonly column: number;
  readonly row: number;
}

/** Four pictograms set as a larger square at a point. */
const DIAMOND: Place[] = [
  { column: 0.5, row: 0 },
  { column: 0, row: 0.5 },
  { column: 1, row: 0.5 },
  { column: 0.5, row: 1 },
];

/** Rows of `columns` and `columns - 1` in turn use up the count exactly. */
function isFull(columns: number, count: number): boolean {
  const pair = 2 * columns - 1;
  return count % pair === 0 || count % pair === columns;
}

/**
 * Ways to set pictograms together. Squares at a point interlock: a second row stands between the points of the
 * first, half a pictogram lower.
 */
function patterns(count: number): readonly (readonly Place[])[] {
  const found: Place[][] = [];
  for (let columns = count; columns >= 1; columns -= 1) {
    const places: Place[] = [];
    for (let row = 0; places.length < count; row += 1) {
      const offset = row % 2 === 0 || columns === 1 ? 0 : 0.5;
      const inRow = offset === 0 ? columns : columns - 1;
      const step = columns === 1 ? 1 : 0.5;
      for (let at = 0; at < inRow && places.length < count; at += 1) {
        places.push({ column: at + offset, row: row * step });
      }
    }
    const full = places.length === count && (columns === count || columns === 1 || isFull(columns, count));
    if (full) found.push(places);
  }
  if (count === 4) found.splice(1, 0, DIAMOND);
  return found;
}

/** All ways to cluster the pictograms, widest first. */
export function clusters(
  figures: readonly PictogramFigure[],
  size: Millimetres,
  frame: FrameStyle,
): readonly Box[] {
  if (figures.length === 0) return [empty];
  const pitch = size * (1 + GAP);
  return patterns(figures.length).map(places => {
    const boxes = figures.map((figure, at) => {
      const { column, row } = places[at]!;
      return { box: pictogramBox(figure, size, frame), x: column * pitch, y: row * pitch };
    });
    const width = Math.max(...places.map(({ column }) => column)) * pitch + size;
    const height = Math.max(...places.map(({ row }) => row)) * pitch + size;
    return overlay(boxes, width, height);
  });
}
