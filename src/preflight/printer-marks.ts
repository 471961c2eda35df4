import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import { extentOf } from './_shapes.ts';
import type { PlacedMark } from './placed-marks.ts';
import type { PrinterLabel } from './profile.ts';

/** A path of so many rectangles is a bar code: the shortest, UPC-E, has 17 bars. */
const LEAST_BARS = 17;

/** An edge so near to a boundary of dots, in dots, gives the same dots on every raster. */
const NEAR = 0.2;

/** Checks that every bar begins and ends with a dot of the printer. */
export function checkDots(marks: readonly PlacedMark[], dpi: number): Diagnostic[] {
  const off = marks.some(({ outlines, mark }) => {
    const bars = mark.paints.includes('fill') && outlines.every(({ length }) => length === 4);
    if (!bars || outlines.length < LEAST_BARS) return false;
    const edges = outlines.flatMap(outline => extentOf(outline));
    return edges.some(edge => {
      const dots = (edge * dpi) / 25.4;
      return Math.abs(dots - Math.round(dots)) > NEAR;
    });
  });
  return off
    ? [
        finding(
          'bars-off-dots',
          'edges of bars lie between the dots of the printer',
          'common practice of roll printers',
        ),
      ]
    : [];
}

/** Symbols may reach so little over the inner edge of a frame, in millimetres. */
const SLIP = 0.05;

/** Checks that every preprinted red frame holds a symbol or is filled, and that nothing else reaches into one. */
export function checkFrames(marks: readonly PlacedMark[], frames: PrinterLabel['frames']): Diagnostic[] {
  const cite = '29 CFR 1910.1200 App. C, C.2.3.1';
  return frames.flatMap(({ left, bottom, side }) => {
    const half = side / Math.SQRT2;
    const [x, y] = [left + half, bottom + half];
    // In a square set at a point, the distances along both axes add up to less than half its diagonal.
    const reach = ([a, b]: readonly [number, number]) => Math.abs(a - x) + Math.abs(b - y);
    const within = marks.filter(({ outlines, text }) =>
      text === ''
        ? outlines.flat().some(point => reach(point) < half - SLIP) || covers(outlines, x, y)
        : meets(outlines, x, y, half),
    );
    if (within.length === 0) return [finding('empty-frame', 'a preprinted red frame stays empty', cite)];
    return within
      .filter(({ outlines, text }) => text !== '' || !fills(outlines, x, y, half))
      .map(({ text }) =>
        finding(
          'over-the-frame',
          `${text === '' ? 'a path' : `"${text.trim()}"`} reaches over a preprinted red frame`,
          cite,
        ),
      );
  });
}

type Outlines = PlacedMark['outlines'];

const covers = (outlines: Outlines, x: number, y: number): boolean => {
  const [left, bottom, right, top] = extentOf(outlines.flat());
  return left < x && right > x && bottom < y && top > y;
};

const meets = (outlines: Outlines, x: number, y: number, half: number): boolean => {
  const [left, bottom, right, top] = extentOf(outlines.flat());
  const [a, b] = [Math.max(left - x, x - right, 0), Math.max(bottom - y, y - top, 0)];
  return a + b < half;
};

/** A symbol wholly inside, or a square that covers the whole frame. */
const fills = (outlines: Outlines, x: number, y: number, half: number): boolean => {
  const distances = outlines.flat().map(([a, b]) => Math.abs(a - x) + Math.abs(b - y));
  return (
    distances.every(distance => distance <= half + SLIP) ||
    distances.every(distance => distance >= half - SLIP)
  );
};

/** The eye mark, which stands where the record has it. */
export const isDeclared = ({ extent, text }: PlacedMark, mark: PrinterLabel['eyeMark']): boolean => {
  if (!mark || text !== '') return false;
  const place = [mark.left, mark.bottom, mark.left + mark.width, mark.bottom + mark.height];
  // It lies on whole dots, at most one away.
  return extent.every((edge, at) => Math.abs(edge - place[at]!) < 0.2);
};
