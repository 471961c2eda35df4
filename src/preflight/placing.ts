import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import { asNumber, asText, entry, members } from './_objects.ts';
import { depthIn, type Extent, extentOf, overlap, type Point } from './_shapes.ts';
import { cornersOf, isText, PRACTICE, quote, TOLERANCE } from './_shown.ts';
import { checkCapitals } from './capitals.ts';
import { checkGround, checkStrips, isGround } from './ground.ts';
import { isTechnical } from './inks.ts';
import type { PageMarks, PaintedMark } from './page-marks.ts';
import { checkWhite, isWhiteGround } from './placed-art.ts';
import { type PlacedMark, placedMarks } from './placed-marks.ts';
import { checkDots, checkFrames, isDeclared } from './printer-marks.ts';
import type { LabelPreflight, PrinterLabel } from './profile.ts';
import { checkQuietZones } from './quiet-zones.ts';

const millimetres = (length: number): string => `${Math.max(0, length).toFixed(2)} mm`;

/** The notice that a label is a draft lies on a layer of its own and over everything. */
const isDraft = (mark: PaintedMark): boolean => onLayer(mark, 'Draft');
/** Of the labeler: its place is given, at the very edge where the labeler asks for that. */
const isEyeMark = (mark: PaintedMark): boolean => onLayer(mark, 'Eye mark');
const onLayer = ({ inside }: PaintedMark, name: string): boolean =>
  inside.some(({ layer }) => asText(entry(layer, 'Name')) === name);
const isDie = ({ stroke, fill }: PaintedMark, ink: string | undefined): boolean =>
  ink !== undefined && (stroke.ink === ink || fill.ink === ink);
const inFigure = ({ inside }: PaintedMark): boolean => inside.some(({ tag }) => tag === 'Figure');

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
  const onEyeMark = marks
    .filter(({ mark }) => isEyeMark(mark))
    .flatMap(eye =>
      marks
        .filter(placed => placed !== eye && overlap(placed.extent, eye.extent) > TOLERANCE)
        .map(placed => over(placed, eye)),
    );
  return [...found, ...onRed, ...onEyeMark];
};

/** A square that stands on one of its corners. */
const isAtPoint = (outline: readonly Point[]): boolean => {
  if (outline.length !== 4) return false;
  const [left, bottom, right, top] = extentOf(outline);
  const [x, y] = [(left + right) / 2, (bottom + top) / 2];
  return outline.every(([a, b]) => Math.abs(a - x) < TOLERANCE || Math.abs(b - y) < TOLERANCE);
};

/** A red frame: two squares one in the other. */
const isPictogram = ({ mark, outlines }: PlacedMark): boolean => {
  const [cyan, magenta = 0, yellow = 0] = mark.fill.components;
  const red = mark.fill.space === 'DeviceCMYK' && cyan === 0 && magenta > 0 && yellow > 0;
  // A printer with black alone has black frames: two squares set at a point.
  const black = mark.fill.space === 'DeviceGray' && cyan === 0 && outlines.every(isAtPoint);
  return mark.paints.includes('fill') && (red || black) && outlines.length === 2;
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

/** Marks of the press stand outside the bleed, as artifacts; what is left is the label. */
function outsideBleed({ page }: PageMarks, marks: readonly PlacedMark[]): readonly PlacedMark[] {
  const [bleed, trim] = ['BleedBox', 'TrimBox'].map(name =>
    members(entry(page.dict, name)).map(corner => ((asNumber(corner) ?? 0) * 25.4) / 72),
  );
  if (bleed?.length !== 4 || trim?.length !== 4) return marks;
  const [x = 0, y = 0] = trim;
  const box: Extent = [bleed[0]! - x, bleed[1]! - y, bleed[2]! - x, bleed[3]! - y];
  const isAside = ({ mark, outlines }: PlacedMark): boolean =>
    mark.inside.some(({ tag }) => tag === 'Artifact') &&
    outlines.every(outline => overlap(extentOf(outline), box) <= -TOLERANCE);
  return marks.filter(placed => !isAside(placed));
}

type Sizes = NonNullable<LabelPreflight['geometry']>;

/**
 * Checks a label of a roll printer: as a label of a press, inside a cut that the file does not show; bars on whole dots;
 * a symbol or black in every preprinted frame, and nothing else.
 */
export function checkPrinterPlacing(page: PageMarks, label: PrinterLabel): Diagnostic[] {
  const marks = placedMarks(page).filter(mark => !isDeclared(mark, label.eyeMark));
  return [
    ...checkOutline(marks, label.cut, label.safe),
    ...checkStrips(marks, label.clear ?? []),
    ...checkWindows(marks),
    ...checkQuietZones(marks, label.cut),
    ...checkOverlaps(marks),
    ...checkSizes(marks, label),
    ...checkDots(marks, label.dpi),
    ...checkFrames(marks, label.frames),
  ];
}

/**
 * Checks where things stand on a label: inside the real outline by the press's distance, nothing in the window for the
 * lot or in a quiet zone, nothing over anything else, type and pictograms no smaller than they may be.
 */
export function checkPlacing(
  page: PageMarks,
  { dieInk, brand, geometry, art }: LabelPreflight,
): Diagnostic[] {
  if (!geometry) return [];
  const placed = placedMarks(page);
  const all = art?.bare ? placed.filter(mark => !isWhiteGround(mark)) : placed;
  const cut = all.find(({ mark }) => isDie(mark, dieInk))?.outlines[0] ?? trimOf(page);
  const printed = outsideBleed(page, all).filter(({ mark }) => !isDie(mark, dieInk) && !isTechnical(mark));
  const artwork = printed.filter(({ mark }) => !isDraft(mark));
  const ink = artwork.filter(({ mark }) => !isGround(mark, brand));
  return [
    ...(cut
      ? checkOutline(
          printed.filter(({ mark }) => !isEyeMark(mark) && !isGround(mark, brand)),
          cut,
          geometry.safe,
        )
      : []),
    ...(art?.bare ? checkWhite(placed, artwork, art.bare) : []),
    ...checkGround(page, artwork, brand),
    ...checkStrips(ink, geometry.clear ?? []),
    ...checkWindows(artwork),
    ...checkQuietZones(artwork, cut),
    ...checkOverlaps(artwork),
    ...checkSizes(artwork, geometry),
    ...checkCapitals(artwork.filter(isText), geometry.capitals ?? []),
  ];
}
