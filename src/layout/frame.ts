import type { Art } from '../artwork/art.ts';
import type { Millimetres, Points } from '../quantity/length.ts';
import type { GlyphRun } from '../text/glyph-run.ts';

/**
 * Inks that a page may use; `die` is the spot colour of the cut line, `coder` that of the window of a coder, `grey` a tint of black dark enough for text,
 * `tint` one light enough for a ground behind text, `brand` the maker's color.
 */
export type Ink = 'black' | 'red' | 'white' | 'die' | 'coder' | 'grey' | 'tint' | 'brand';

/**
 * Layer on which an item lies: artwork, the notice that a label is a draft, the mark for the eye of the labeler, the
 * window of its coder, or the non-printing cut line.
 */
export type LayerName = 'artwork' | 'draft' | 'eye-mark' | 'coder' | 'die';

/** Why an item carries no meaning for a reader of the tags. */
export type ArtifactKind = 'layout' | 'header' | 'footer' | 'background';

/** A tag of the structure tree (ISO 32000-1 14.8.4); items point to it by identity. */
export interface Tag {
  readonly type:
    | 'Document'
    | 'Sect'
    | 'H1'
    | 'H2'
    | 'H3'
    | 'H4'
    | 'H5'
    | 'P'
    | 'L'
    | 'LI'
    | 'Lbl'
    | 'LBody'
    | 'Table'
    | 'Caption'
    | 'THead'
    | 'TBody'
    | 'TR'
    | 'TH'
    | 'TD'
    | 'Figure'
    | 'Span';
  readonly children: Tag[];
  readonly alt?: string;
  readonly lang?: string;
  readonly scope?: 'Row' | 'Column' | 'Both';
  readonly colSpan?: number;
  /** How the labels of a list count; `Disc` for a bullet (ISO 32000-1 Table 347). */
  readonly listNumbering?: 'Disc';
}

interface Placed {
  /** The tag whose content this is, or the kind of artifact. */
  readonly tag: Tag | ArtifactKind;
  readonly layer?: LayerName;
}

/** A shaped run of text; x and y give the start of its baseline. */
export interface TextItem extends Placed {
  readonly kind: 'text';
  readonly x: Millimetres;
  readonly y: Millimetres;
  readonly size: Points;
  readonly run: GlyphRun;
  readonly ink: Ink;
  /** Degrees counter-clockwise about (x, y). */
  readonly rotate?: number;
}

/** Outline in millimetres: SVG-style segments, absolute coordinates, y downwards. */
export type Segment =
  | readonly ['M' | 'L', Millimetres, Millimetres]
  | readonly ['C', Millimetres, Millimetres, Millimetres, Millimetres, Millimetres, Millimetres]
  | readonly ['Z'];

export interface PathItem extends Placed {
  readonly kind: 'path';
  readonly segments: readonly Segment[];
  readonly fill?: Ink;
  readonly fillRule?: 'nonzero' | 'evenodd';
  readonly stroke?: Ink;
  readonly strokeWidth?: Millimetres;
}

/** Artwork or a logo of the maker, over the whole of a rectangle; x and y give its upper left corner. */
export interface ArtItem extends Placed {
  readonly kind: 'art';
  readonly x: Millimetres;
  readonly y: Millimetres;
  readonly width: Millimetres;
  readonly height: Millimetres;
  readonly art: Art;
}

export type FrameItem = TextItem | PathItem | ArtItem;

/** A finished page: items at fixed positions, origin at the upper left corner of the trim, y downwards. */
export interface Frame {
  readonly width: Millimetres;
  readonly height: Millimetres;
  /** Beyond the trim on every side. */
  readonly bleed: Millimetres;
  /** Beyond the bleed, for marks; 0 where the page has none. */
  readonly slug: Millimetres;
  readonly items: readonly FrameItem[];
}

/** All pages of one document with its structure tree and what goes into its metadata. */
export interface PagedDocument {
  readonly frames: readonly Frame[];
  readonly root: Tag;
  readonly title: string;
  /** BCP 47. */
  readonly language: string;
  readonly subject: string;
  /** ISO 8601 instant written as creation date. */
  readonly date: string;
  readonly attachments: readonly Attachment[];
}

/** A file carried inside the PDF (ISO 32000-1 7.11.4). */
export interface Attachment {
  readonly name: string;
  readonly mediaType: string;
  readonly description: string;
  readonly relationship: 'Source' | 'Data' | 'Supplement';
  readonly bytes: Uint8Array;
}
