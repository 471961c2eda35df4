import { type DotGeometry, dotSize, wholeDots } from '../../barcode/printer-dots.ts';
import { type Millimetres, toPoints } from '../../quantity/length.ts';
import { breakLines, textWidth } from '../../text/break-lines.ts';
import type { FaceName, FontLibrary } from '../../text/glyph-run.ts';
import type { FrameItem, PagedDocument, Segment, Tag } from '../frame.ts';
import { type Format, formatSize } from './thermal-stock.ts';

/** A line of text at its place: origin at the upper left corner of the page. */
export interface TextAt {
  readonly x: Millimetres;
  /** Top of the capitals. */
  readonly y: Millimetres;
  /** Height of the capitals. */
  readonly height: Millimetres;
  readonly face?: FaceName;
  /** Room; the text is set smaller where it is wider. */
  readonly width: Millimetres;
  readonly align?: 'left' | 'centre' | 'right';
}

/** A page of a roll printer: a whole number of dots each way, black alone. */
export class DotPage {
  readonly dot: Millimetres;
  readonly width: Millimetres;
  readonly height: Millimetres;
  readonly #fonts: FontLibrary;
  readonly #items: FrameItem[] = [];
  readonly #tags: Tag[] = [];

  constructor(format: Format, dpi: number, fonts: FontLibrary) {
    const { width, height } = formatSize(format);
    this.dot = dotSize(dpi);
    this.width = wholeDots(width, dpi) * this.dot;
    this.height = wholeDots(height, dpi) * this.dot;
    this.#fonts = fonts;
  }

  /** The nearest boundary of a dot. */
  snap(length: Millimetres): Millimetres {
    return Math.round(length / this.dot) * this.dot;
  }

  /** Size of a face in points for a height of its capitals. */
  #size(height: Millimetres, face: FaceName): number {
    return toPoints((height * 1000) / this.#fonts.metrics(face).capHeight);
  }

  /** Width of a text at a height of its capitals. */
  widthOf(text: string, face: FaceName, height: Millimetres): Millimetres {
    return textWidth(this.#fonts, text, face, this.#size(height, face));
  }

  /** Height of capitals at which a text fits a width, not above the wanted one. */
  fitted(text: string, face: FaceName, height: Millimetres, width: Millimetres): Millimetres {
    const natural = this.widthOf(text, face, height);
    return natural <= width ? height : (height * width) / natural;
  }

  /** The lines of a text at a height of its capitals; null where a word is wider than the room. */
  lines(text: string, face: FaceName, height: Millimetres, width: Millimetres): string[] | null {
    const lines = breakLines([{ text, face }], width, {
      fonts: this.#fonts,
      size: this.#size(height, face),
    });
    return lines.some(({ forced }) => forced) ? null : lines.map(line => line.text);
  }

  /** Sets a line. */
  text(
    text: string,
    { x, y, height, width, face = 'regular', align = 'left' }: TextAt,
    type: 'P' | 'H1' = 'P',
  ) {
    const tag = this.#tag({ type, children: [] });
    this.#put(text, face, this.fitted(text, face, height, width), x, y, width, align, tag);
  }

  #put(
    text: string,
    face: FaceName,
    height: Millimetres,
    x: Millimetres,
    top: Millimetres,
    width: Millimetres,
    align: NonNullable<TextAt['align']>,
    tag: Tag,
  ) {
    const size = this.#size(height, face);
    const room = width - textWidth(this.#fonts, text, face, size);
    const shift = align === 'left' ? 0 : align === 'centre' ? room / 2 : room;
    const run = this.#fonts.shape(text, face);
    this.#items.push({ kind: 'text', tag, x: x + shift, y: top + height, size, run, ink: 'black' });
  }

  /** Lays a symbol in the middle of the page with its text under it. @returns where its box ends below */
  symbol(geometry: DotGeometry, top: Millimetres, alt: string): Millimetres {
    const left = this.snap((this.width - geometry.width) / 2);
    const y = this.snap(top);
    const tag = this.#tag({ type: 'Figure', children: [], alt });
    this.#items.push({
      kind: 'path',
      tag,
      fill: 'black',
      segments: geometry.bars.flatMap(bar => rectangle(left + bar.x, y + bar.y, bar.width, bar.height)),
    });
    for (const { text, centre, baseline, height, maxWidth } of geometry.digits) {
      const fits = this.fitted(text, 'regular', height, maxWidth);
      const from = left + centre - maxWidth / 2;
      this.#put(text, 'regular', fits, from, y + baseline - fits, maxWidth, 'centre', tag);
    }
    return y + geometry.height;
  }

  /** Draws a filled shape as a figure of its own, or as an ornament where it has no alternative text. */
  shape(outlines: readonly (readonly Point[])[], alt: string | null) {
    const tag = alt === null ? ('layout' as const) : this.#tag({ type: 'Figure', children: [], alt });
    this.#items.push({
      kind: 'path',
      tag,
      fill: 'black',
      fillRule: 'evenodd',
      segments: outlines.flatMap(closed),
    });
  }

  /** Draws a symbol in a square set at a point, all of it black. @param size between opposite corners */
  figure(
    symbol: readonly Segment[],
    at: {
      readonly x: Millimetres;
      readonly y: Millimetres;
      readonly size: Millimetres;
      readonly frame: Millimetres;
      /** Side of the square that the symbol is drawn in. */
      readonly viewBox: number;
    },
    alt: string,
  ) {
    const half = at.size / 2;
    const [middle, centre] = [at.x + half, at.y + half];
    const square = (reach: Millimetres): Segment[] =>
      closed([
        [middle, centre - reach],
        [middle + reach, centre],
        [middle, centre + reach],
        [middle - reach, centre],
      ]);
    const scale = at.size / at.viewBox;
    const placed = symbol.map(([command, ...numbers]) => [
      command,
      ...numbers.map((number, i) => (i % 2 === 0 ? at.x : at.y) + number * scale),
    ]) as unknown as Segment[];
    this.#items.push({
      kind: 'path',
      tag: this.#tag({ type: 'Figure', children: [], alt }),
      fill: 'black',
      fillRule: 'evenodd',
      segments: [...square(half), ...square(half - at.frame * Math.SQRT2), ...placed],
    });
  }

  /** A rule over a width. */
  rule(x: Millimetres, y: Millimetres, width: Millimetres, dots = 2) {
    const top = this.snap(y);
    const height = dots * this.dot;
    this.shape(
      [
        [
          [x, top],
          [x + width, top],
          [x + width, top + height],
          [x, top + height],
        ],
      ],
      null,
    );
  }

  #tag(tag: Tag): Tag {
    this.#tags.push(tag);
    return tag;
  }

  /** The page as a document of its own. */
  document(title: string, subject: string, date: string): PagedDocument {
    return {
      frames: [{ width: this.width, height: this.height, bleed: 0, slug: 0, items: this.#items }],
      root: { type: 'Document', children: this.#tags },
      title,
      subject,
      language: 'en-US',
      date,
      attachments: [],
    };
  }
}

type Point = readonly [Millimetres, Millimetres];

const closed = (points: readonly Point[]): Segment[] => [
  ...points.map(([x, y], at): Segment => [at === 0 ? 'M' : 'L', x, y]),
  ['Z'],
];

const rectangle = (x: Millimetres, y: Millimetres, width: Millimetres, height: Millimetres): Segment[] =>
  closed([
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ]);
