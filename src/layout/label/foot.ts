import type { Millimetres } from '../../quantity/length.ts';
import { barCodeBox, orientations } from './bar-code-block.ts';
import { type Box, empty, move, overlay, stack } from './box.ts';
import type { Arrangement } from './parts.ts';
import { lotWindow, textSection } from './small-blocks.ts';
import { TooNarrow } from './text-block.ts';

/** Narrowest supplier column, in heights of the x. */
const LEAST_TEXT = 20;

export interface FootContents {
  readonly supplier: boolean;
  readonly contents: boolean;
}

/**
 * Supplier, net contents, window for the lot, and bar code: side by side or below each other, whichever is lower.
 * @throws TooNarrow where no way fits the width
 */
export function footBlock(arrangement: Arrangement, width: Millimetres, include: FootContents): Box {
  const { parts, measures, fonts } = arrangement;
  const barCodes: readonly Box[] = parts.barCode
    ? orientations(parts.barCode, measures.scale).map(({ turn, x }) =>
        barCodeBox(parts.barCode!, x, turn, fonts),
      )
    : [empty];
  const candidates: Box[] = [];
  for (const bars of barCodes) {
    for (const make of [asTwoColumns, asCells, asRow, asRows, asStack]) {
      try {
        candidates.push(make(arrangement, width, include, bars));
      } catch (error) {
        if (!(error instanceof TooNarrow)) throw error;
      }
    }
    // The second orientation is only for want of room.
    if (candidates.length > 0) break;
  }
  const lowest = candidates.sort((a, b) => a.height - b.height)[0];
  if (!lowest) throw new TooNarrow();
  return lowest;
}

type Maker = (arrangement: Arrangement, width: Millimetres, include: FootContents, bars: Box) => Box;

const supplierOf = (arrangement: Arrangement, width: Millimetres, { supplier }: FootContents): Box => {
  if (!supplier || !arrangement.parts.placed.supplier) return empty;
  if (width < LEAST_TEXT * arrangement.measures.xHeight) throw new TooNarrow();
  return textSection(arrangement.parts.placed.supplier, width, arrangement);
};

const contentsOf = (arrangement: Arrangement, width: Millimetres, { contents }: FootContents): Box =>
  contents ? textSection(arrangement.parts.placed.contents, width, arrangement) : empty;

const lotOf = (arrangement: Arrangement, width: Millimetres): Box => {
  const { lot } = arrangement.parts.placed;
  if (!lot) return empty;
  const { profile, lotWindow: fixed } = arrangement.parts;
  const wanted = fixed ?? arrangement.measures.lotWindow;
  if (width < (fixed ?? profile.lotWindow.minimum).width) throw new TooNarrow();
  return lotWindow(lot, arrangement, { width: Math.min(width, wanted.width), height: wanted.height });
};

/** Contents left, window in the middle, bars right, where the supplier stands elsewhere. */
const asCells: Maker = (arrangement, width, include, bars) => {
  if (include.supplier || !include.contents || bars.width === 0) throw new TooNarrow();
  const gutter = arrangement.measures.gutter * 1.4;
  const room = width - bars.width - gutter;
  const lot = lotOf(arrangement, room / 2);
  const contents = contentsOf(arrangement, room - lot.width - gutter, include);
  const height = Math.max(contents.height, lot.height, bars.height);
  const middle = Math.max(contents.width + gutter, (room - lot.width) * 0.75);
  return overlay(
    [contents, move(lot, middle, height - lot.height), move(bars, width - bars.width, height - bars.height)],
    width,
    height,
  );
};

/** Supplier left, contents above the window in the middle, bars right. */
const asRow: Maker = (arrangement, width, include, bars) => {
  const { measures } = arrangement;
  const gutter = measures.gutter * 1.4;
  const middleRoom = Math.max((arrangement.parts.lotWindow ?? measures.lotWindow).width, width * 0.24);
  const contents = contentsOf(arrangement, middleRoom, include);
  const lot = lotOf(arrangement, middleRoom);
  const middleWidth = Math.max(contents.width, lot.width);
  const taken = [middleWidth, bars.width]
    .filter(size => size > 0)
    .reduce((sum, size) => sum + size + gutter, 0);
  const supplier = supplierOf(arrangement, width - taken, include);
  if (supplier.height === 0 && taken - gutter > width) throw new TooNarrow();
  const gap = contents.height > 0 && lot.height > 0 ? measures.gap : 0;
  const height = Math.max(supplier.height, contents.height + gap + lot.height, bars.height);
  const right = width - bars.width;
  const middle = supplier.height > 0 ? right - (bars.width > 0 ? gutter : 0) - middleWidth : 0;
  return overlay(
    [
      supplier,
      move(contents, middle, 0),
      move(lot, middle, height - lot.height),
      move(bars, right, height - bars.height),
    ],
    width,
    height,
  );
};

/** Everything else left, the window at the bottom, bars right. */
const asTwoColumns: Maker = (arrangement, width, include, bars) => {
  const { measures } = arrangement;
  const room = width - bars.width - measures.gutter * 1.4;
  if (bars.width === 0 || room <= 0) throw new TooNarrow();
  const text = stack(
    [supplierOf(arrangement, room, include), contentsOf(arrangement, room, include)],
    measures.gap,
  );
  const lot = lotOf(arrangement, room);
  const gap = text.height > 0 && lot.height > 0 ? measures.gap : 0;
  const height = Math.max(text.height + gap + lot.height, bars.height);
  return overlay(
    [text, move(lot, 0, height - lot.height), move(bars, width - bars.width, height - bars.height)],
    width,
    height,
  );
};

/** Supplier in the first row, contents, window and bars in the second. */
const asRows: Maker = (arrangement, width, include, bars) => {
  const { measures } = arrangement;
  const supplier = supplierOf(arrangement, width, include);
  const rest = asRow(arrangement, width, { ...include, supplier: false }, bars);
  if (supplier.height === 0) throw new TooNarrow();
  return { ...stack([supplier, rest], measures.gap), width };
};

/** All below each other. */
const asStack: Maker = (arrangement, width, include, bars) => {
  if (bars.width > width) throw new TooNarrow();
  const boxes = [
    supplierOf(arrangement, width, include),
    contentsOf(arrangement, width, include),
    lotOf(arrangement, width),
    bars,
  ];
  return { ...stack(boxes, arrangement.measures.gap), width };
};
