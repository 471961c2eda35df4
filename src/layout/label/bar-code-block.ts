import { type SymbolGeometry, symbolGeometry } from '../../barcode/geometry.ts';
import { barHeight, NOMINAL_X, smallestDiameter, widestUprightBars } from '../../barcode/spec.ts';
import type { EncodedSymbol } from '../../barcode/symbols.ts';
import { type Millimetres, type Points, toMillimetres, toPoints } from '../../quantity/length.ts';
import { textWidth } from '../../text/break-lines.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import type { PathItem, Segment, Tag } from '../frame.ts';
import { type Box, drawn, named, rectangle } from './box.ts';

/** How the bars stand: upright side by side as a fence, or as rungs of a ladder round a small bottle. */
export type Orientation = 'fence' | 'ladder';

/** The bar code at a scale, and how it must stand on its container. */
export interface BarCode {
  readonly symbol: EncodedSymbol;
  readonly tag: Tag;
  readonly barWidthReduction: Millimetres;
  /** Diameter of a cylindrical container, or null. */
  readonly diameter: Millimetres | null;
}

/** The way in which the bar code stands at a part of its target size; a fence is kept narrow enough for the curvature. */
export function orientations(
  code: BarCode,
  part: number,
): readonly { readonly turn: Orientation; readonly x: Millimetres }[] {
  const { spec } = code.symbol;
  const x = Math.max(spec.x.min, spec.x.target * part);
  const widest = code.diameter === null ? Number.POSITIVE_INFINITY : widestUprightBars(code.diameter);
  const fence = Math.min(x, widest / spec.modules);
  const ladder = { turn: 'ladder' as const, x };
  return fence < spec.x.min ? [ladder] : [{ turn: 'fence', x: fence }, ladder];
}

/** Least diameter at which the bars may stand upright at their smallest size. */
export const leastFenceDiameter = ({ symbol: { spec } }: BarCode): Millimetres =>
  smallestDiameter(spec.modules * spec.x.min);

/**
 * Bars as one path, and digits in the text face as outlines. The box holds the quiet zones but for what may reach beyond its
 * right edge, or in a ladder its lower edge, into the margin of the label, where nothing is printed.
 */
export function barCodeBox(
  code: BarCode,
  { turn, x }: { readonly turn: Orientation; readonly x: Millimetres },
  margin: Millimetres,
  fonts: FontLibrary,
): Box {
  const geometry = symbolGeometry(code.symbol, x, { barWidthReduction: code.barWidthReduction });
  const items = () => itemsOf(geometry, code.tag, fonts);
  const { left, right } = inkExtent(geometry, fonts);
  if (turn === 'fence') {
    const width = Math.max(right, geometry.width - margin);
    return named('bar-code', drawn(width, geometry.height, items));
  }
  // Turned counter-clockwise, the left end of the bars stands below: the quiet zone at its foot reaches into the margin.
  const height = geometry.width - Math.min(margin, left);
  const ladder = drawn(geometry.height, height, () => items().map(item => turned(item, geometry.width)));
  return named('bar-code', ladder, true);
}

function itemsOf(geometry: SymbolGeometry, tag: Tag, fonts: FontLibrary): readonly PathItem[] {
  const bars: PathItem = {
    kind: 'path',
    tag,
    segments: geometry.bars.flatMap(bar => rectangle(bar.x, bar.y, bar.width, bar.height)),
    fill: 'black',
  };
  return [bars, ...digitItems(geometry, tag, fonts)];
}

/** From the first to the last ink of bars and digits. */
function inkExtent(geometry: SymbolGeometry, fonts: FontLibrary): { left: Millimetres; right: Millimetres } {
  const digits = geometry.digits.map(({ text, centre, height, maxWidth }) => {
    const { capHeight } = fonts.metrics('regular');
    const half =
      Math.min(maxWidth, textWidth(fonts, text, 'regular', toPoints((height * 1000) / capHeight))) / 2;
    return [centre - half, centre + half] as const;
  });
  const bars = geometry.bars.map(({ x, width }) => [x, x + width] as const);
  const all = [...digits, ...bars];
  return { left: Math.min(...all.map(([from]) => from)), right: Math.max(...all.map(([, to]) => to)) };
}

/**
 * Digits as outlines, as symbols are supplied by their makers: as text, single figures scattered round the bars would
 * break the order in which readers of the file give back its words. The figure's alternate text holds the number.
 */
function digitItems({ digits }: SymbolGeometry, tag: Tag, fonts: FontLibrary): PathItem[] {
  const { capHeight } = fonts.metrics('regular');
  return digits.map(({ text, centre, baseline, height, maxWidth }) => {
    const wanted: Points = toPoints((height * 1000) / capHeight);
    const natural = textWidth(fonts, text, 'regular', wanted);
    const size = natural > maxWidth ? (wanted * maxWidth) / natural : wanted;
    const left = centre - textWidth(fonts, text, 'regular', size) / 2;
    const perMille = toMillimetres(size) / 1000;
    const segments = fonts
      .outline(text, 'regular')
      .map(
        ([name, ...numbers]) =>
          [
            name,
            ...numbers.map((value, at) =>
              at % 2 === 0 ? left + value * perMille : baseline - value * perMille,
            ),
          ] as unknown as Segment,
      );
    return { kind: 'path', tag, segments, fill: 'black' };
  });
}

/** A quarter turn counter-clockwise of what is drawn in a width. */
function turned(item: PathItem, width: Millimetres): PathItem {
  const turnSegment = ([name, ...numbers]: Segment): Segment =>
    [
      name,
      ...numbers.map((_, at) =>
        at % 2 === 0 ? (numbers[at + 1] as number) : width - (numbers[at - 1] as number),
      ),
    ] as unknown as Segment;
  return { ...item, segments: item.segments.map(turnSegment) };
}

/** Measures of a symbol as it is printed at a part of its target size. */
export function barCodeOf(code: BarCode, part: number, turned: boolean) {
  const { spec } = code.symbol;
  const ways = orientations(code, part);
  const x = (ways.find(({ turn }) => turn === (turned ? 'ladder' : 'fence')) ?? ways[0]!).x;
  const rounded = (value: number) => Number(value.toFixed(3));
  return {
    symbology: spec.name,
    x: rounded(x),
    magnification: Number(((x / NOMINAL_X) * 100).toFixed(1)),
    height: rounded(barHeight(spec, x)),
    quietZones: [rounded(spec.quietZone.left * x), rounded(spec.quietZone.right * x)] as const,
  };
}
