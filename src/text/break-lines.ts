import type { Millimetres, Points } from '../quantity/length.ts';
import { breakOpportunities, forcedPlaces, type Piece } from './break-opportunity.ts';
import { type FaceName, type FontLibrary, type GlyphRun, runWidth } from './glyph-run.ts';
import { keepTogether } from './keep-together.ts';

/** A stretch of a paragraph in one face. */
export interface TextSpan {
  readonly text: string;
  readonly face: FaceName;
  /** Where it differs from the size of the paragraph. */
  readonly size?: Points;
}

/** A shaped part of a line. */
export interface LineRun {
  readonly run: GlyphRun;
  readonly size: Points;
  /** From the left edge of the column. */
  readonly x: Millimetres;
  readonly width: Millimetres;
  /** Index of the span that it comes from. */
  readonly span: number;
}

export interface TextLine {
  readonly runs: readonly LineRun[];
  /** Indent of the line; its text reaches from here to `indent + width`. */
  readonly indent: Millimetres;
  readonly width: Millimetres;
  readonly text: string;
  /** A word was forced apart at the end of the line, since no line could hold it. */
  readonly forced: boolean;
  /** The line ends the paragraph or a line feed ends it. */
  readonly last: boolean;
}

export interface BreakOptions {
  readonly fonts: FontLibrary;
  readonly size: Points;
  /** Indent of the first line, default 0. */
  readonly firstIndent?: Millimetres;
  /** Indent of all other lines, default 0. */
  readonly indent?: Millimetres;
}

// Rounding of sums must not push a line that fits exactly into overflow.
const TOLERANCE: Millimetres = 1e-6;
// Up to this share of the line the sum of its words decides.
const SURE = 0.95;

/** Width of a text on one line. @throws MissingGlyphError */
export const textWidth = (fonts: FontLibrary, text: string, face: FaceName, size: Points): Millimetres =>
  runWidth(fonts.shape(text, face), size);

class Paragraph {
  readonly text: string;
  readonly #spans: readonly TextSpan[];
  readonly #starts: readonly number[];
  readonly #options: BreakOptions;

  constructor(spans: readonly TextSpan[], options: BreakOptions) {
    const texts = spans.map(({ text }) => text);
    const joined = keepTogether(texts.join(''));
    let start = 0;
    this.#starts = texts.map(text => {
      start += text.length;
      return start - text.length;
    });
    this.text = joined;
    this.#spans = spans;
    this.#options = options;
  }

  /** Shapes a part of the paragraph, one run a span. */
  runs(start: number, end: number, indent: Millimetres): LineRun[] {
    const runs: LineRun[] = [];
    let x = indent;
    for (const [span, { face, size = this.#options.size, text }] of this.#spans.entries()) {
      const from = this.#starts[span] ?? 0;
      if (from >= end || from + text.length <= start) continue;
      const part = this.text.slice(Math.max(start, from), Math.min(end, from + text.length));
      const shown = from + text.length >= end ? part.replace(/\u00AD$/u, '-') : part;
      const run = this.#options.fonts.shape(shown, face);
      const width = runWidth(run, size);
      runs.push({ run, size, x, width, span });
      x += width;
    }
    return runs;
  }

  width(start: number, end: number): Millimetres {
    return this.runs(start, end, 0).reduce((sum, { width }) => sum + width, 0);
  }
}

/** Longest part of a word that fits, cut after a sign if there is one, else after any character. */
const forceApart = (paragraph: Paragraph, piece: Piece, room: Millimetres): number => {
  const word = paragraph.text.slice(piece.start, piece.end);
  const fits = (place: number) => paragraph.width(piece.start, piece.start + place) <= room + TOLERANCE;
  const { afterSigns, anywhere } = forcedPlaces(word);
  const place = afterSigns.findLast(fits) ?? anywhere.findLast(fits) ?? anywhere[0] ?? word.length;
  return piece.start + place;
};

/**
 * Breaks a paragraph into lines, first fit. Numbers keep their units; a word that no line can hold is forced apart
 * and its line marked so. White space at the ends of lines is dropped.
 * @param width of the column, in millimetres
 * @throws MissingGlyphError
 */
export const breakLines = (
  spans: readonly TextSpan[],
  width: Millimetres,
  options: BreakOptions,
): TextLine[] => {
  const paragraph = new Paragraph(spans, options);
  const queue = breakOpportunities(paragraph.text);
  const lines: TextLine[] = [];
  const indentNow = () => (lines.length === 0 ? (options.firstIndent ?? 0) : (options.indent ?? 0));
  const close = (start: number, end: number, forced: boolean, last: boolean) => {
    const indent = indentNow();
    const runs = paragraph.runs(start, end, indent);
    const set = runs.reduce((sum, run) => sum + run.width, 0);
    lines.push({ runs, indent, width: set, text: runs.map(({ run }) => run.text).join(''), forced, last });
  };

  let start: number | undefined;
  let end = 0;
  let estimate = 0;
  for (let index = 0; index < queue.length; ) {
    const piece = queue[index]!;
    if (start === undefined) {
      estimate = 0;
      end = piece.start;
    }
    const room = width - indentNow();
    const reach = estimate + paragraph.width(end, piece.end);
    // Word by word the kerning with spaces is missed: near the edge the whole line is measured.
    const fits = reach < room * SURE || paragraph.width(start ?? piece.start, piece.end) <= room + TOLERANCE;
    if (fits) {
      const blank = piece.end === piece.start && !piece.mandatory;
      if (start !== undefined || !blank) start ??= piece.start;
      end = piece.end;
      estimate = reach;
      index += 1;
      if (piece.mandatory) {
        close(start ?? piece.start, end, false, true);
        start = undefined;
      }
    } else if (start !== undefined) {
      close(start, end, false, false);
      start = undefined;
    } else {
      const cut = forceApart(paragraph, piece, room);
      close(piece.start, cut, cut < piece.end, cut >= piece.end && piece.mandatory);
      if (cut < piece.end) queue[index] = { ...piece, start: cut };
      else index += 1;
    }
  }
  if (start !== undefined) close(start, end, false, true);
  return lines;
};
