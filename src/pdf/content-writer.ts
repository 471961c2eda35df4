import type { Art } from '../artwork/art.ts';
import type { ArtItem, Frame, FrameItem, Ink, PathItem, TextItem } from '../layout/frame.ts';
import { toPoints } from '../quantity/length.ts';
import { pdfNumber } from './_number.ts';
import { artMatrix } from './art.ts';
import type { EmbeddedFonts } from './font.ts';
import { inkOperators, KNOCKOUT_STATE, OVERPRINT_STATE } from './ink.ts';
import { DEFAULT_OVERPRINT, type PdfProfile } from './profile.ts';
import { utf16 } from './to-unicode.ts';

/** Lower left and upper right corner in points of the page. */
export type Box = readonly [number, number, number, number];

// A line such as "< 5 %" starts with evenly spaced single characters: readers that guess words from gaps take it for
// one letter-spaced word unless they are told its text.
const SINGLE_CHARACTERS = /^\S \S(?: |$)/u;

const actualText = (text: string): string => `/Span <</ActualText <FEFF${utf16(text)}>>> BDC`;

/** Writes the operators of one page, state changes only where needed. */
export class ContentWriter {
  readonly #out: string[] = [];
  readonly #state = new Map<string, string>();
  readonly #profile: PdfProfile;
  readonly #fonts: EmbeddedFonts;
  readonly #art: ReadonlyMap<Art, string>;
  readonly #offset: number;
  readonly #height: number;

  constructor(
    frame: Frame,
    profile: PdfProfile,
    fonts: EmbeddedFonts,
    art: ReadonlyMap<Art, string> = new Map(),
  ) {
    this.#profile = profile;
    this.#fonts = fonts;
    this.#art = art;
    this.#offset = frame.bleed + frame.slug;
    this.#height = toPoints(frame.height + 2 * this.#offset);
  }

  get operators(): string {
    return `${this.#out.join('\n')}\n`;
  }

  put(...operators: readonly string[]): void {
    this.#out.push(...operators);
  }

  #set(parameter: string, operator: string): void {
    if (this.#state.get(parameter) === operator) return;
    this.#state.set(parameter, operator);
    this.put(operator);
  }

  #x(millimetres: number): number {
    return toPoints(millimetres + this.#offset);
  }

  #y(millimetres: number): number {
    return this.#height - toPoints(millimetres + this.#offset);
  }

  #point(x: number, y: number): string {
    return `${pdfNumber(this.#x(x))} ${pdfNumber(this.#y(y))}`;
  }

  #overprint(on: boolean): void {
    if (this.#profile.kind !== 'label') return;
    this.#set('overprint', `/${on ? OVERPRINT_STATE : KNOCKOUT_STATE} gs`);
  }

  #limits() {
    return (this.#profile.kind === 'label' ? this.#profile.overprint : undefined) ?? DEFAULT_OVERPRINT;
  }

  #ink(use: 'fill' | 'stroke', ink: Ink): void {
    this.#set(use, inkOperators(this.#profile, ink)[use]);
  }

  texts(items: readonly TextItem[], spaced: ReadonlySet<TextItem>): void {
    this.put('BT');
    for (const item of items) {
      this.#overprint(item.ink === 'black' && item.size <= this.#limits().text);
      this.#ink('fill', item.ink);
      this.#set('font', `/${this.#fonts.resourceName(item.run.face)} ${pdfNumber(item.size)} Tf`);
      const angle = ((item.rotate ?? 0) * Math.PI) / 180;
      const [cos, sin] = [pdfNumber(Math.cos(angle)), pdfNumber(Math.sin(angle))];
      this.put(`${cos} ${sin} ${pdfNumber(-Math.sin(angle))} ${cos} ${this.#point(item.x, item.y)} Tm`);
      const text = `${this.#fonts.textArray(item.run, spaced.has(item))} TJ`;
      if (SINGLE_CHARACTERS.test(item.run.text)) this.put(actualText(item.run.text), text, 'EMC');
      else this.put(text);
    }
    this.put('ET');
  }

  /** Artwork knocks out what lies below; its inks are its own. */
  art({ art, x, y, width, height }: ArtItem): void {
    this.#overprint(false);
    const [wide, high] = [toPoints(width), toPoints(height)];
    const matrix = artMatrix(art, { x: this.#x(x), y: this.#y(y + height), width: wide, height: high });
    this.put(
      'q',
      `${matrix.map(part => Number(part.toFixed(6))).join(' ')} cm`,
      `/${this.#art.get(art)} Do`,
      'Q',
    );
  }

  path(item: PathItem): void {
    const { fill, stroke, strokeWidth = 0 } = item;
    if (!fill && !stroke) throw new Error('a path is neither filled nor stroked');
    if (fill === 'die' || fill === 'coder') throw new Error('a technical line is stroked, never filled');
    const rule = stroke === 'black' && !fill && strokeWidth <= this.#limits().stroke;
    this.#overprint(stroke === 'die' || stroke === 'coder' || rule);
    if (fill) this.#ink('fill', fill);
    if (stroke) {
      this.#ink('stroke', stroke);
      this.#set('width', `${pdfNumber(toPoints(strokeWidth))} w`);
    }
    for (const segment of item.segments) this.put(this.#segment(segment));
    const star = item.fillRule === 'evenodd' ? '*' : '';
    this.put(fill ? (stroke ? `B${star}` : `f${star}`) : 'S');
  }

  #segment(segment: PathItem['segments'][number]): string {
    switch (segment[0]) {
      case 'M':
        return `${this.#point(segment[1], segment[2])} m`;
      case 'L':
        return `${this.#point(segment[1], segment[2])} l`;
      case 'C': {
        const [, x1, y1, x2, y2, x, y] = segment;
        return `${this.#point(x1, y1)} ${this.#point(x2, y2)} ${this.#point(x, y)} c`;
      }
      case 'Z':
        return 'h';
    }
  }

  /** Box round the items; for text the em square of each run. */
  box(items: readonly FrameItem[]): Box {
    const xs: number[] = [];
    const ys: number[] = [];
    const add = (x: number, y: number) => {
      xs.push(x);
      ys.push(y);
    };
    for (const item of items) {
      if (item.kind === 'text') {
        const angle = ((item.rotate ?? 0) * Math.PI) / 180;
        const length = (item.run.advance * item.size) / 1000;
        for (const [along, up] of [
          [0, 0],
          [length, 0],
          [0, item.size],
          [length, item.size],
        ] as const) {
          add(
            this.#x(item.x) + along * Math.cos(angle) - up * Math.sin(angle),
            this.#y(item.y) + along * Math.sin(angle) + up * Math.cos(angle),
          );
        }
      } else if (item.kind === 'art') {
        add(this.#x(item.x), this.#y(item.y));
        add(this.#x(item.x + item.width), this.#y(item.y + item.height));
      } else {
        for (const [, ...numbers] of item.segments)
          for (let index = 0; index < numbers.length; index += 2)
            add(this.#x(numbers[index]!), this.#y(numbers[index + 1]!));
      }
    }
    return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
  }
}
