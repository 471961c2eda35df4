import { type SymbolGeometry, symbolGeometry } from '../../barcode/geometry.ts';
import { smallestDiameter, widestUprightBars } from '../../barcode/spec.ts';
import type { EncodedSymbol } from '../../barcode/symbols.ts';
import { type Millimetres, type Points, toPoints } from '../../quantity/length.ts';
import { textWidth } from '../../text/break-lines.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import type { FrameItem, Segment, Tag } from '../frame.ts';
import { type Box, named, rectangle } from './box.ts';

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

/** X-dimension at a scale from 0 to 1: from the least to the target size. */
export function xDimension({ symbol: { spec } }: BarCode, scale: number): Millimetres {
  return spec.x.min + (spec.x.target - spec.x.min) * Math.min(1, scale * 2);
}

/** The ways in which the bar code may stand at a scale; a fence is kept small enough for the curvature. */
export function orientations(code: BarCode, scale: number): readonly { turn: Orientation; x: Millimetres }[] {
  const { spec } = code.symbol;
  const x = xDimension(code, scale);
  const widest = code.diameter === null ? Number.POSITIVE_INFINITY : widestUprightBars(code.diameter);
  const fence = Math.min(x, widest / spec.modules);
  const ladder = { turn: 'ladder' as const, x };
  return fence < spec.x.min ? [ladder] : [{ turn: 'fence', x: fence }, ladder];
}

/** Least diameter at which the bars may stand upright at their smallest size. */
export const leastFenceDiameter = ({ symbol: { spec } }: BarCode): Millimetres =>
  smallestDiameter(spec.modules * spec.x.min);

/** Bars as one path, and digits in the text face. */
export function barCodeBox(code: BarCode, x: Millimetres, turn: Orientation, fonts: FontLibrary): Box {
  const geometry = symbolGeometry(code.symbol, x, { barWidthReduction: code.barWidthReduction });
  const bars: FrameItem = {
    kind: 'path',
    tag: code.tag,
    segments: geometry.bars.flatMap(bar => rectangle(bar.x, bar.y, bar.width, bar.height)),
    fill: 'black',
  };
  const box: Box = {
    width: geometry.width,
    height: geometry.height,
    items: [bars, ...digitItems(geometry, code.tag, fonts)],
    areas: [],
  };
  return named('bar-code', turn === 'fence' ? box : turned(box));
}

function digitItems({ digits }: SymbolGeometry, tag: Tag, fonts: FontLibrary): FrameItem[] {
  const { capHeight } = fonts.metrics('regular');
  return digits.map(({ text, centre, baseline, height, maxWidth }) => {
    const wanted: Points = toPoints((height * 1000) / capHeight);
    const natural = textWidth(fonts, text, 'regular', wanted);
    const size = natural > maxWidth ? (wanted * maxWidth) / natural : wanted;
    const width = textWidth(fonts, text, 'regular', size);
    const run = fonts.shape(text, 'regular');
    return { kind: 'text', x: centre - width / 2, y: baseline, size, run, ink: 'black', tag };
  });
}

/** A quarter turn counter-clockwise. */
function turned({ width, height, items, areas }: Box): Box {
  const turnSegment = (segment: Segment): Segment => {
    const [name, ...numbers] = segment;
    const turnedNumbers = numbers.map((_, at) =>
      at % 2 === 0 ? (numbers[at + 1] as number) : width - (numbers[at - 1] as number),
    );
    return [name, ...turnedNumbers] as unknown as Segment;
  };
  return {
    width: height,
    height: width,
    areas,
    items: items.map(item =>
      item.kind === 'text'
        ? { ...item, x: item.y, y: width - item.x, rotate: 90 }
        : { ...item, segments: item.segments.map(turnSegment) },
    ),
  };
}
