import type { Millimetres } from '../../quantity/length.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import type { PagedDocument } from '../frame.ts';
import { DotPage } from './dot-page.ts';
import { type Format, thermalStock } from './thermal-stock.ts';

/** Sizes of the mark of a limited quantity, in millimetres. */
export interface SquareOnPoint {
  /** Outside of the border. */
  readonly side: Millimetres;
  readonly border: Millimetres;
  /** Depth of the black top and bottom as a share of the height from point to point. */
  readonly blackDepth: number;
}

interface Words {
  readonly alt: string;
  /** Small line at the foot. */
  readonly foot: string;
  readonly title: string;
  /** ISO 8601 instant. */
  readonly date: string;
}

type Point = readonly [Millimetres, Millimetres];

/**
 * The mark of a limited quantity (49 CFR 172.315(a)): a square on a point, border, top and bottom black, centre white.
 * @returns null where the stock is too small for it
 */
export function layoutLimitedQuantity(
  { side, border, blackDepth }: SquareOnPoint,
  words: Words,
  dpi: number,
  fonts: FontLibrary,
): { readonly document: PagedDocument; readonly format: Format } | null {
  for (const format of ['portrait', 'large'] as const) {
    const page = new DotPage(format, dpi, fonts);
    // A dot more, so that no rounding to dots takes side or border under what the law asks.
    const across = (side + page.dot) * Math.SQRT2;
    const line = border + 2 * page.dot;
    const foot = footOf(page, words.foot);
    const room = Math.min(page.width, page.height - foot.height - 1) - 2 * thermalStock.edge.value;
    if (across > room) continue;
    const x = page.width / 2;
    const y = (page.height - foot.height - 1) / 2;
    const reach = across / 2;
    const square = (r: Millimetres): Point[] => [
      [x, y - r],
      [x + r, y],
      [x, y + r],
      [x - r, y],
    ];
    // The border is measured across the line, so the points of its inside lie further in.
    const inner = reach - line * Math.SQRT2;
    const depth = across * blackDepth;
    const band = reach - depth;
    const half = inner - band;
    // One path: border, and inside it the black top and bottom.
    page.shape(
      [
        square(reach),
        [
          [x + half, y - band],
          [x + inner, y],
          [x + half, y + band],
          [x - half, y + band],
          [x - inner, y],
          [x - half, y - band],
        ],
      ],
      words.alt,
    );
    putFoot(page, foot);
    return { document: page.document(words.title, words.alt, words.date), format };
  }
  return null;
}

/** Two upright arrows over a bar (49 CFR 172.312(a)(2)), as large as asked. */
export function layoutOrientation(
  height: Millimetres,
  words: Words & { readonly caption: string },
  dpi: number,
  fonts: FontLibrary,
): PagedDocument {
  const page = new DotPage('portrait', dpi, fonts);
  const width = height * 0.45;
  const middle = page.width / 2;
  const top = (page.height - height) / 2 - 8;
  const line = height * 0.06;
  const arrow = (centre: Millimetres): Point[] => {
    const [shaft, head] = [width * 0.2, height * 0.4];
    const bottom = top + height - 2.4 * line;
    return [
      [centre, top],
      [centre + width / 2, top + head],
      [centre + shaft, top + head],
      [centre + shaft, bottom],
      [centre - shaft, bottom],
      [centre - shaft, top + head],
      [centre - width / 2, top + head],
    ];
  };
  const [left, right] = [middle - width * 1.25, middle + width * 1.25];
  page.shape(
    [
      arrow(middle - width * 0.65),
      arrow(middle + width * 0.65),
      [
        [left, top + height - line],
        [right, top + height - line],
        [right, top + height],
        [left, top + height],
      ],
    ],
    words.alt,
  );
  const margin = thermalStock.margin.value;
  page.text(words.caption, {
    x: margin,
    y: top + height + 6,
    height: thermalStock.text.name.largest,
    width: page.width - 2 * margin,
    face: 'bold',
    align: 'centre',
  });
  putFoot(page, footOf(page, words.foot));
  return page.document(words.title, words.alt, words.date);
}

const LEADING = 1.4;

/** The lines of the foot and the height that they take. */
function footOf(
  page: DotPage,
  text: string,
): { readonly lines: readonly string[]; readonly height: Millimetres } {
  const height = thermalStock.text.small.value;
  const width = page.width - 2 * thermalStock.margin.value;
  const lines = page.lines(text, 'regular', height, width) ?? [text];
  return { lines, height: lines.length * height * LEADING };
}

function putFoot(page: DotPage, { lines, height }: ReturnType<typeof footOf>): void {
  const margin = thermalStock.margin.value;
  for (const [at, line] of lines.entries())
    page.text(line, {
      x: margin,
      y: page.height - thermalStock.edge.value - height + at * thermalStock.text.small.value * LEADING,
      height: thermalStock.text.small.value,
      width: page.width - 2 * margin,
      align: 'centre',
    });
}
