import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import { asNumber, asText, entry, members } from './_objects.ts';
import { depthIn, type Extent, overlap, type Point } from './_shapes.ts';
import { checkCapitals } from './capitals.ts';
import type { PageMarks, PaintedMark } from './page-marks.ts';
import { type PlacedMark, placedMarks } from './placed-marks.ts';
import type { LabelPreflight } from './profile.ts';
import symbols from './quiet-zones.json' with { type: 'json' };

const TOLERANCE = 0.005;
const PRACTICE = 'common practice of label printers';

const quote = ({ text }: PlacedMark): string => (text === '' ? 'a path' : `"${text.trim()}"`);
const millimetres = (length: number): string => `${Math.max(0, length).toFixed(2)} mm`;

/** The notice that a label is a draft lies on a layer of its own and over everything. */
const isDraft = ({ inside }: PaintedMark): boolean =>
  inside.some(({ layer }) => asText(entry(layer, 'Name')) === 'Draft');
const isDie = ({ stroke, fill }: PaintedMark, ink: string | undefined): boolean =>
  ink !== undefined && (stroke.ink === ink || fill.ink === ink);
const inFigure = ({ inside }: PaintedMark): boolean => inside.some(({ tag }) => tag === 'Figure');
const isText = ({ mark }: PlacedMark): boolean => mark.paints.includes('text');

const cornersOf = ([left, bottom, right, top]: Extent): readonly Point[] => [
  [left, bottom],
  [right, bottom],
  [right, top],
  [left, top],
];

/** Corners of the stroke of a path lie half its width outside. */
const reach = (placed: PlacedMark): readonly Point[] => {
  const points = placed.outlines.flat();
  if (isText(placed) || !placed.mark.paints.includes('stroke')) return points;
  return cornersOf(placed.extent);
};

const checkOutline = (marks: readonly PlacedMark[], cut: readonly Point[], safe: number): Diagnostic[] =>
  marks.flatMap(placed => {
    // The shape is convex: what holds for the corners of the extent holds for all that is in it.
    if (cornersOf(placed.extent).every(corner => depthIn(cut, corner) >= safe)) return [];
    const depth = Math.min(...reach(placed).map(point => depthIn(cut, point)));
    if (depth < 0)
      return [
        finding('off-the-die', `${quote(placed)} reaches ${millimetres(-depth)} over the cut`, PRACTICE),
      ];
    if (depth < safe - TOLERANCE)
      return [
        finding(
          'near-the-cut',
          `${quote(placed)} stands ${millimetres(depth)} from the cut, nearer than ${millimetres(safe)}`,
          PRACTICE,
        ),
      ];
    return [];
  });

/** A stroked rectangle is the window that the coder prints into. */
const isWindow = ({ mark, outlines }: PlacedMark): boolean =>
  mark.paints.join() === 'stroke' && outlines.length === 1 && outlines[0]!.length === 4;

const checkWindows = (marks: readonly PlacedMark[]): Diagnostic[] =>
  marks.filter(isWindow).flatMap(window => {
    const [left, bottom, right, top] = window.extent;
    const clear: Extent = [left + 0.3, bottom + 0.3, right - 0.3, top - 0.3];
    return marks
      .filter(placed => placed !== window && overlap(placed.extent, clear) > TOLERANCE)
      .map(placed =>
        finding('in-the-window', `${quote(placed)} stands in the window for lot and date`, PRACTICE),
      );
  });

interface Bars {
  readonly placed: PlacedMark;
  readonly zones: readonly Extent[];
}

/** The quiet zones of a path of bars, or null for another path; the symbol is known by the number of its bars. */
const barsOf = (placed: PlacedMark): Bars | null => {
  const bars = placed.outlines.map(outline => {
    const xs = outline.map(([x]) => x);
    const ys = outline.map(([, y]) => y);
    return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)] as const;
  });
  if (placed.outlines.some(({ length }) => length !== 4)) return null;
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

const checkQuietZones = (marks: readonly PlacedMark[], cut: readonly Point[] | null): Diagnostic[] =>
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

/** Descenders may stand in the room of accents, not in capitals. */
const DESCENDERS = 0.45;

const checkOverlaps = (marks: readonly PlacedMark[]): Diagnostic[] => {
  const texts = marks.filter(isText);
  const pictograms = marks.filter(isPictogram);
  const over = (a: PlacedMark, b: PlacedMark) =>
    finding('overlap', `${quote(a)} and ${quote(b)} lie over each other`, 'ISO 32000-1 8.2');
  const found = texts.flatMap((a, at) =>
    texts.slice(at + 1).flatMap(b => {
      const most = DESCENDERS * Math.min(a.xHeight ?? 0, b.xHeight ?? 0);
      return overlap(a.extent, b.extent) > most ? [over(a, b)] : [];
    }),
  );
  const onRed = pictograms.flatMap(diamond =>
    texts
      .filter(text => reach(text).some(point => depthIn(diamond.outlines[0]!, point) > TOLERANCE))
      .map(text => over(text, diamond)),
  );
  return [...found, ...onRed];
};

/** A red frame: two squares one in the other. */
const isPictogram = ({ mark, outlines }: PlacedMark): boolean => {
  const [cyan, magenta = 0, yellow = 0] = mark.fill.components;
  const red = mark.fill.space === 'DeviceCMYK' && cyan === 0 && magenta > 0 && yellow > 0;
  return mark.paints.includes('fill') && red && outlines.length === 2;
};

const checkSizes = (marks: readonly PlacedMark[], { xHeight, pictogramSide }: Sizes): Diagnostic[] => [
  ...marks
    .filter(placed => isText(placed) && !inFigure(placed.mark) && placed.xHeight! < xHeight - TOLERANCE)
    .map(placed =>
      finding(
        'type-too-small',
        `${quote(placed)} has an x-height of ${millimetres(placed.xHeight!)}, under ${millimetres(xHeight)}`,
        PRACTICE,
      ),
    ),
  ...marks.filter(isPictogram).flatMap(({ extent: [left, , right] }) => {
    const side = (right - left) / Math.SQRT2;
    return side >= pictogramSide - TOLERANCE
      ? []
      : [
          finding(
            'pictogram-too-small',
            `a pictogram has a side of ${millimetres(side)}, under ${millimetres(pictogramSide)}`,
            'Regulation (EC) No 1272/2008 Annex I 1.2.1.2',
          ),
        ];
  }),
];

/** The trim of a page without cut line. */
function trimOf({ page }: PageMarks): readonly Point[] | null {
  const corners = members(entry(page.dict, 'TrimBox')).map(corner => asNumber(corner) ?? 0);
  const [left = 0, bottom = 0, right = 0, top = 0] = corners.map(corner => (corner * 25.4) / 72);
  const [width, height] = [right - left, top - bottom];
  return width > 0 && height > 0
    ? [
        [0, 0],
        [width, 0],
        [width, height],
        [0, height],
      ]
    : null;
}

type Sizes = NonNullable<LabelPreflight['geometry']>;

/**
 * Checks where things stand on a label: inside the real outline by the press's distance, nothing in the window for the
 * lot or in a quiet zone, nothing over anything else, type and pictograms no smaller than they may be.
 */
export function checkPlacing(page: PageMarks, { dieInk, geometry }: LabelPreflight): Diagnostic[] {
  if (!geometry) return [];
  const all = placedMarks(page);
  const cut = all.find(({ mark }) => isDie(mark, dieInk))?.outlines[0] ?? trimOf(page);
  const printed = all.filter(({ mark }) => !isDie(mark, dieInk));
  const artwork = printed.filter(({ mark }) => !isDraft(mark));
  return [
    ...(cut ? checkOutline(printed, cut, geometry.safe) : []),
    ...checkWindows(artwork),
    ...checkQuietZones(artwork, cut),
    ...checkOverlaps(artwork),
    ...checkSizes(artwork, geometry),
    ...checkCapitals(artwork.filter(isText), geometry.capitals ?? []),
  ];
}
