import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import { depthIn, type Extent, overlap, type Point } from './_shapes.ts';
import { cornersOf, quote, TOLERANCE } from './_shown.ts';
import type { PlacedMark } from './placed-marks.ts';
import symbols from './quiet-zones.json' with { type: 'json' };

interface Bars {
  readonly placed: PlacedMark;
  readonly zones: readonly Extent[];
}

/** The quiet zones of a path of bars, or null for another path; the symbol is known by the number of its bars. */
const barsOf = (placed: PlacedMark): Bars | null => {
  if (placed.outlines.some(({ length }) => length !== 4)) return null;
  const bars = placed.outlines.map(outline => {
    const xs = outline.map(([x]) => x);
    const ys = outline.map(([, y]) => y);
    return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)] as const;
  });
  const upright = bars.every(([left, bottom, right, top]) => top - bottom > right - left);
  const lengths = bars.map(([left, bottom, right, top]) => (upright ? top - bottom : right - left));
  const shortest = Math.min(...lengths);
  const long = lengths.filter(length => length > shortest + TOLERANCE).length;
  const symbol = symbols.symbols.find(
    ({ bars: count, longAtMost }) => count === bars.length && long <= longAtMost,
  );
  if (!symbol) return null;
  const [left, bottom, right, top] = placed.extent;
  const x = (upright ? right - left : top - bottom) / symbol.modules;
  const ends = lengths
    .map((length, at) => ({ length, bar: bars[at]! }))
    .filter(({ length }) => length < shortest + TOLERANCE);
  const [low, high] = upright
    ? [Math.max(...ends.map(({ bar }) => bar[1])), Math.min(...ends.map(({ bar }) => bar[3]))]
    : [Math.max(...ends.map(({ bar }) => bar[0])), Math.min(...ends.map(({ bar }) => bar[2]))];
  const zones: Extent[] = upright
    ? [
        [left - symbol.left * x, low, left, high],
        [right, low, right + symbol.right * x, high],
      ]
    : [
        [low, bottom - symbol.left * x, high, bottom],
        [low, top, high, top + symbol.right * x],
      ];
  return { placed, zones };
};

/** Checks that nothing stands in a quiet zone, and that the cut runs through none. */
export const checkQuietZones = (marks: readonly PlacedMark[], cut: readonly Point[] | null): Diagnostic[] =>
  marks.flatMap(barsOf).flatMap(bars => {
    if (!bars) return [];
    const cite = 'GS1 General Specifications 5.2.3.4';
    const found = bars.zones.flatMap(zone =>
      marks
        .filter(placed => placed !== bars.placed && overlap(placed.extent, zone) > TOLERANCE)
        .map(placed =>
          finding('in-the-quiet-zone', `${quote(placed)} stands in the quiet zone of the bar code`, cite),
        ),
    );
    const corners = bars.zones.flatMap(cornersOf);
    if (cut && corners.some(corner => depthIn(cut, corner) < -TOLERANCE))
      found.push(finding('quiet-zone-cut', 'the cut runs through the quiet zone of the bar code', cite));
    return found;
  });
