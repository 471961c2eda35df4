import type { Millimetres } from '../../quantity/length.ts';
import { barCodeBox } from './bar-code-block.ts';
import { orientations } from './bar-code-sizes.ts';
import { type Box, empty, named, overlay, type Placed, stack } from './box.ts';
import type { Paragraph, Section } from './content.ts';
import { contentsBox } from './contents-box.ts';
import { lotWindow } from './lot-window.ts';
import { once } from './once.ts';
import type { Making } from './parts.ts';
import { naturalWidth, paragraphsBox, passage } from './text-block.ts';

/** Narrowest supplier column, in heights of the x. */
const LEAST_TEXT = 20;

export interface FootContents {
  readonly supplier: boolean;
  readonly contents: boolean;
}

type Maker = (making: Making, width: Millimetres, include: FootContents, bars: Box) => Box | null;

/**
 * Supplier, net contents, window for the lot, and bar code: side by side on one base line or below each other,
 * whichever is lower. Null where no way fits
 * the width.
 * @param beyond what is free at the right of the block, where a quiet zone may reach
 */
export const footBlock = (
  making: Making,
  width: Millimetres,
  include: FootContents,
  beyond: Millimetres = making.measures.margin,
): Box | null =>
  once(making, `foot ${width} ${include.supplier} ${include.contents} ${beyond}`, () =>
    lowestFoot(making, width, include, beyond),
  );

function lowestFoot(
  making: Making,
  width: Millimetres,
  include: FootContents,
  beyond: Millimetres,
): Box | null {
  const { parts, measures, fonts, display, centred } = making;
  const { barCode } = parts;
  const ways = barCode ? orientations(barCode, display.bars) : [null];
  let lowest: Box | null = null;
  for (const way of ways) {
    // Where the sides are not straight, nothing is gained at the edge of a block.
    const margin = centred ? 0 : Math.min(beyond, measures.margin);
    const bars =
      barCode && way
        ? once(making, `bars ${way.turn} ${way.x} ${margin}`, () => barCodeBox(barCode, way, margin, fonts))!
        : empty;
    for (const make of [asRow, asBesideStack, asBesideRow, asRows, asStack]) {
      const box = make(making, width, include, bars);
      if (box && (!lowest || box.height < lowest.height - 1e-6)) lowest = box;
    }
    // The second orientation is only for want of room.
    if (lowest && !display.turn) return lowest;
  }
  return lowest;
}

const section = (found: Section | undefined, width: Millimetres, making: Making): Box | null => {
  if (!found) return empty;
  const box = paragraphsBox(found.paragraphs, width, making);
  return box && named(found.role, box);
};

const supplierOf = (making: Making, width: Millimetres, { supplier }: FootContents): Box | null => {
  if (!supplier || !making.parts.placed.supplier) return empty;
  if (width < LEAST_TEXT * making.measures.xHeight) return null;
  return section(making.parts.placed.supplier, width, making);
};

const widest = (paragraphs: readonly Paragraph[], making: Making): Millimetres =>
  Math.max(0, ...paragraphs.map(paragraph => naturalWidth(passage(paragraph, making.fonts), making)));

/** Net contents, no wider than their longest line. */
const contentsOf = (making: Making, width: Millimetres, { contents }: FootContents): Box | null => {
  const { contents: found } = making.parts.placed;
  if (!contents || !found) return empty;
  const natural = widest(found.paragraphs, making) + 1e-6;
  const box = contentsBox(found, Math.min(width, natural), making);
  return box && named(found.role, box);
};

/** Boxes side by side on one base line: the first at the left, the last at the right, the others between. */
function onBaseLine(boxes: readonly Box[], width: Millimetres, gutter: Millimetres): Box | null {
  const shown = boxes.filter(({ height }) => height > 0);
  const used = shown.reduce((sum, box) => sum + box.width, 0);
  const least = Math.max(0, shown.length - 1) * gutter;
  if (used + least > width + 1e-6) return null;
  const base = Math.max(0, ...shown.map(({ height, fall }) => height - fall));
  const fall = Math.max(0, ...shown.map(box => box.fall));
  const space = shown.length > 1 ? (width - used) / (shown.length - 1) : 0;
  let x = 0;
  const placed = shown.map((box): Placed => {
    const place = { box, x, y: base - (box.height - box.fall) };
    x += box.width + space;
    return place;
  });
  return overlay(placed, width, base + fall, fall);
}

const gutterOf = ({ measures }: Making): Millimetres => measures.gutter;

/** Supplier, contents with the window, and bars; or contents, window and bars where the supplier stands elsewhere. */
const asRow: Maker = (making, width, include, bars) => {
  const gutter = gutterOf(making);
  const contents = contentsOf(making, width, include);
  const wanted = making.parts.lotWindow ?? making.measures.lotWindow;
  const frame = 2 * making.measures.thin;
  if (!contents) return null;
  if (include.supplier && making.parts.placed.supplier) {
    const lot = lotWindow(making, wanted.width + frame);
    if (!lot) return null;
    const middle = stack([contents, lot], making.measures.gap);
    const rest = width - middle.width - bars.width - (bars.width > 0 ? 2 : 1) * gutter;
    const most = widest(making.parts.placed.supplier.paragraphs, making) + 1e-6;
    const supplier = supplierOf(making, Math.min(rest, most), include);
    return supplier && onBaseLine([supplier, middle, bars], width, gutter);
  }
  const room = width - bars.width - contents.width - (bars.width > 0 ? 2 : 1) * gutter;
  const lot = lotWindow(making, Math.min(room, wanted.width + frame));
  return lot && onBaseLine([contents, lot, bars], width, gutter);
};

/** Everything else at the left, below each other, bars at the right. */
const asBesideStack: Maker = (making, width, include, bars) => {
  const room = width - bars.width - gutterOf(making);
  if (bars.width === 0 || room <= 0) return null;
  const boxes = [
    supplierOf(making, room, include),
    contentsOf(making, room, include),
    lotWindow(making, room),
  ];
  if (boxes.some(box => !box)) return null;
  return onBaseLine([stack(boxes as Box[], making.measures.gap), bars], width, gutterOf(making));
};

/** Supplier above contents and window at the left, bars at the right. */
const asBesideRow: Maker = (making, width, include, bars) => {
  const gutter = gutterOf(making);
  const room = width - bars.width - gutter;
  if (bars.width === 0 || room <= 0) return null;
  const supplier = supplierOf(making, room, include);
  const contents = contentsOf(making, room, include);
  if (!supplier || !contents || supplier.height === 0 || contents.height === 0) return null;
  const lot = lotWindow(making, room - contents.width - gutter);
  const row = lot && onBaseLine([contents, lot], room, gutter);
  if (!row) return null;
  return onBaseLine([{ ...stack([supplier, row], making.measures.gap), width: room }, bars], width, gutter);
};

/** Supplier in the first row, contents, window and bars in the second. */
const asRows: Maker = (making, width, include, bars) => {
  const supplier = supplierOf(making, width, include);
  if (!supplier || supplier.height === 0) return null;
  const rest = asRow(making, width, { ...include, supplier: false }, bars);
  return rest && { ...stack([supplier, rest], making.measures.gap), width };
};

/** All below each other, bars at the right. */
const asStack: Maker = (making, width, include, bars) => {
  if (bars.width > width) return null;
  const texts = [
    supplierOf(making, width, include),
    contentsOf(making, width, include),
    lotWindow(making, width),
  ];
  if (texts.some(box => !box)) return null;
  const flush = overlay([{ box: bars, x: width - bars.width, y: 0 }], width, bars.height);
  return { ...stack([...(texts as Box[]), flush], making.measures.gap), width };
};
