import type { Millimetres, Points } from '../quantity/length.ts';

/** Process inks as parts of 0 to 1: cyan, magenta, yellow, black. */
export type Inks = readonly [number, number, number, number];

/** A transformation of ISO 32000-1 8.3.3, which is that of SVG. */
export type Matrix = readonly [number, number, number, number, number, number];

/** Outline in the units of its drawing, absolute, y downwards. */
export type DrawnSegment =
  | readonly ['M' | 'L', number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z'];

/** A line drawn along an outline; lengths in the units of its drawing. */
export interface DrawnLine {
  readonly inks: Inks;
  readonly width: number;
  /** Butt, round, projecting square (ISO 32000-1 Table 54). */
  readonly cap: 0 | 1 | 2;
  /** Miter, round, bevel (ISO 32000-1 Table 55). */
  readonly join: 0 | 1 | 2;
  readonly miter: number;
  readonly dash: readonly number[];
  readonly dashFrom: number;
}

/** One outline of a drawing. */
export interface DrawnShape {
  /** Into the units of the drawing. */
  readonly matrix: Matrix;
  readonly segments: readonly DrawnSegment[];
  readonly fill: Inks | null;
  readonly rule: 'nonzero' | 'evenodd';
  readonly line: DrawnLine | null;
}

interface Sized {
  /** Path as messages name it. */
  readonly file: string;
  /** Size at which it was made; null where its file does not say. */
  readonly size: { readonly width: Millimetres; readonly height: Millimetres } | null;
  /** Width by height. */
  readonly aspect: number;
}

/** A drawing of filled and stroked outlines. */
export interface DrawingArt extends Sized {
  readonly kind: 'drawing';
  /** Left, top, width and height of what is seen, in its units. */
  readonly view: readonly [number, number, number, number];
  readonly shapes: readonly DrawnShape[];
}

/** A picture of pixels, converted to inks. */
export interface PictureArt extends Sized {
  readonly kind: 'picture';
  readonly columns: number;
  readonly rows: number;
  /** One byte a component, row by row from above. */
  readonly space: 'DeviceGray' | 'DeviceCMYK';
  readonly samples: Uint8Array;
  /** One byte a pixel, 255 opaque; null where all is. */
  readonly alpha: Uint8Array | null;
  /** The file as it was given, for pictures of the label. */
  readonly source: Uint8Array;
}

/** A page of a PDF, placed as it is. */
export interface PageArt extends Sized {
  /** Spot inks by name, with the process inks of their full tint in percent; null where these are not known. */
  readonly tints: ReadonlyMap<string, readonly number[] | null>;
  readonly kind: 'page';
  readonly source: Uint8Array;
  /** Counts from 0. */
  readonly page: number;
  /** Left, bottom, right, top of the page that the size is of. */
  readonly box: readonly [Points, Points, Points, Points];
  readonly transparent: boolean;
}

/** Artwork or a logo of the maker, read from its file. */
export type Art = DrawingArt | PictureArt | PageArt;

/** What the press and the label ask of artwork. */
export interface ArtRules {
  /** Most ink on one place, percent. */
  readonly inkLimit: number;
  /** Least pixels per inch at the placed size. */
  readonly dpi: number;
  /** Names of inks that the label itself uses for what is not printed. */
  readonly reservedInks: readonly string[];
  /** Names under which cut lines are known, in lower case without spaces. */
  readonly cutInks: readonly string[];
}
