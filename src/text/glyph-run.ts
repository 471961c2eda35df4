import type { Millimetres, Points } from '../quantity/length.ts';

/** Faces that the layouts may ask for. */
export type FaceName = 'regular' | 'bold' | 'italic';

/** A shaped run of text in one face: glyphs with kerned advances in thousandths of the em. */
export interface GlyphRun {
  readonly face: FaceName;
  readonly text: string;
  readonly glyphs: readonly Glyph[];
  /** Sum of the advances in thousandths of the em. */
  readonly advance: number;
}

export interface Glyph {
  readonly id: number;
  /** Kerned advance in thousandths of the em. */
  readonly advance: number;
  /** Advance that the font's own width table gives, in thousandths of the em. */
  readonly width: number;
  /** The characters that this glyph stands for. */
  readonly text: string;
}

/** `M` and `L` with a point, `C` with two control points and a point, `Z`. */
export type OutlineCommand = readonly ['M' | 'L' | 'C' | 'Z', ...number[]];

/** Measures of a face in thousandths of the em; the descent is negative. */
export interface FaceMetrics {
  readonly ascent: number;
  readonly descent: number;
  readonly capHeight: number;
  readonly xHeight: number;
}

/** Fonts loaded once, given to layout and writer as an argument. */
export interface FontLibrary {
  /**
   * Shapes with kerning and without ligatures; the text is first made settable (see `settable`).
   * @throws MissingGlyphError where the face lacks a character: a missing glyph on a hazard label must stop the run.
   */
  shape(text: string, face: FaceName): GlyphRun;
  /** The characters of a text that the face cannot show, each once, in order; empty where `shape` will succeed. */
  missing(text: string, face: FaceName): readonly string[];
  metrics(face: FaceName): FaceMetrics;
  /**
   * Outlines of a text from the start of its base line, in thousandths of the em, y upwards.
   * @throws MissingGlyphError
   */
  outline(text: string, face: FaceName): readonly OutlineCommand[];
  /** Outline of one glyph of a run from the start of its base line, in thousandths of the em, y upwards. */
  glyph(id: number, face: FaceName): readonly OutlineCommand[];
  /** The font file of a face, for embedding. */
  bytes(face: FaceName): Uint8Array;
}

/** Width of a run set at a size. */
export const runWidth = (run: GlyphRun, size: Points): Millimetres => (run.advance * size * 25.4) / 72_000;
