import type { SymbolGeometry } from '../../barcode/geometry.ts';
import { dotSize } from '../../barcode/printer-dots.ts';
import { type Millimetres, type Points, toMillimetres, toPoints } from '../../quantity/length.ts';
import { textWidth } from '../../text/break-lines.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import type { PathItem, Segment, Tag } from '../frame.ts';
import { type BarCode, geometryOf, type Way } from './bar-code-sizes.ts';
import { type Box, drawn, named, rectangle } from './box.ts';

/**
 * Bars as one path, and digits in the text face as outlines. The box holds the quiet zones but for what may reach beyond its
 * right edge, or in a ladder its lower edge, into the margin of the label, where nothing is printed.
 */
export function barCodeBox(code: BarCode, { turn, x }: Way, margin: Millimetres, fonts: FontLibrary): Box {
  const geometry = geometryOf(code, x);
  const put = (box: Box) => (code.dpi === undefined ? box : onDots(box, dotSize(code.dpi)));
  const items = () => itemsOf(geometry, code.tag, fonts);
  const { left, right } = inkExtent(geometry, fonts);
  if (turn === 'fence') {
    const width = Math.max(right, geometry.width - margin);
    return put(named('bar-code', drawn(width, geometry.height, items)));
  }
  // Turned counter-clockwise, the left end of the bars stands below: the quiet zone at its foot reaches into the margin.
  const height = geometry.width - Math.min(margin, left);
  const ladder = drawn(geometry.height, height, () => items().map(item => turned(item, geometry.width)));
  return put(named('bar-code', ladder, true));
}

/** A box that is drawn on the next boundaries of a printer's dots, with the room for that. */
const onDots = (box: Box, dot: Millimetres): Box => {
  const up = (length: Millimetres) => Math.ceil(length / dot - 1e-6) * dot;
  return {
    width: box.width + dot,
    height: box.height + dot,
    fall: box.fall,
    draw: (sheet, x, y) => box.draw(sheet, up(x), up(y)),
  };
};

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
