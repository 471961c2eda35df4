import type { Millimetres, Points } from '../../quantity/length.ts';
import { toPoints } from '../../quantity/length.ts';
import { type FontLibrary, runWidth } from '../../text/glyph-run.ts';
import type { Ink } from '../frame.ts';
import { type Box, empty, type Sheet, stack } from './box.ts';
import type { Paragraph } from './content.ts';
import { breakEvenly, lineCount, type Measure } from './line-break.ts';
import { lineRuns, type Measured, measured } from './measured.ts';
import type { Measures } from './measures.ts';
import { LEADING, STYLES } from './styles.ts';

export interface Setting {
  readonly fonts: FontLibrary;
  readonly measures: Measures;
}

export type Align = 'left' | 'centre' | 'right';

/** A paragraph, or a part of one, to be set in a column. */
export interface Passage {
  readonly text: Measured;
  /** Words from and to. */
  readonly from: number;
  readonly to: number;
}

/** The whole of a paragraph. */
export function passage(paragraph: Paragraph, fonts: FontLibrary): Passage {
  const text = measured(paragraph, fonts);
  return { text, from: 0, to: text.words.length };
}

interface SetOptions {
  /** Times the running text, instead of the factor of the style. */
  readonly factor?: number;
  readonly align?: Align;
  readonly ink?: Ink;
}

/** Hanging indent in thousandths of the em. */
const HANGING = 700;

function measureOf(text: Measured, width: Millimetres, em: Millimetres): Measure {
  const { style } = text.paragraph;
  const indent = text.marker ? text.marker.width : STYLES[style].hanging ? HANGING : 0;
  return { width: (width * 1000) / em, firstIndent: text.marker ? indent : 0, indent };
}

/** A passage set in a width: its extent now, its lines when drawn. Null where a word is wider than the line. */
export function textBox(
  { text, from, to }: Passage,
  width: Millimetres,
  { fonts, measures }: Setting,
  { factor = STYLES[text.paragraph.style].factor, align = 'left', ink = 'black' }: SetOptions = {},
): Box | null {
  const em = measures.em * factor;
  const measure = measureOf(text, width, em);
  const lines = lineCount(text.words, from, to, measure);
  if (lines === null) return null;
  if (lines === 0) return empty;
  const { capHeight, descent } = fonts.metrics(text.face);
  const rise = (em * capHeight) / 1000;
  const fall = (em * -descent) / 1000;
  const leading = em * LEADING;
  return {
    width,
    height: rise + (lines - 1) * leading + fall,
    fall,
    draw(sheet, x, y) {
      const ends = breakEvenly(text.words, from, to, measure) ?? [];
      let start = from;
      for (const [at, end] of ends.entries()) {
        const indent = at === 0 && from === 0 ? measure.firstIndent : measure.indent;
        const line = { text, from: start, to: end, indent: (indent * em) / 1000, first: start === 0 };
        drawLine(sheet, line, { x, y: y + rise + at * leading, width, align, size: toPoints(em), ink });
        start = end;
      }
    },
  };
}

interface Line extends Passage {
  readonly indent: Millimetres;
  /** The first of its paragraph. */
  readonly first: boolean;
}

interface Place {
  readonly x: Millimetres;
  readonly y: Millimetres;
  readonly width: Millimetres;
  readonly align: Align;
  readonly size: Points;
  readonly ink: Ink;
}

function drawLine(sheet: Sheet, line: Line, { x, y, width, align, size, ink }: Place): void {
  const { marker, paragraph, words } = line.text;
  if (marker && line.first)
    sheet.items.push({
      kind: 'text',
      x,
      y,
      size,
      run: marker.run,
      ink,
      tag: paragraph.marker?.tag ?? paragraph.tag,
    });
  const runs = lineRuns(words.slice(line.from, line.to));
  const set = runs.reduce((sum, run) => sum + runWidth(run, size), 0);
  const shift = align === 'left' ? 0 : (width - line.indent - set) * (align === 'centre' ? 0.5 : 1);
  let at = x + line.indent + shift;
  for (const run of runs) {
    sheet.items.push({ kind: 'text', x: at, y, size, run, ink, tag: paragraph.tag });
    at += runWidth(run, size);
  }
}

/** The width that a passage takes where nothing breaks it but its own line feeds. */
export function naturalWidth({ text, from, to }: Passage, { measures }: Setting): Millimetres {
  let widest = 0;
  let line = text.marker?.width ?? 0;
  for (const word of text.words.slice(from, to)) {
    line += word.width;
    widest = Math.max(widest, line);
    line = word.mandatory ? 0 : line + word.gap;
  }
  return (widest * measures.em * STYLES[text.paragraph.style].factor) / 1000;
}

/** Paragraphs below each other; null where one does not fit the width. */
export function paragraphsBox(
  paragraphs: readonly Paragraph[],
  width: Millimetres,
  setting: Setting,
  options?: SetOptions,
): Box | null {
  const boxes: Box[] = [];
  for (const paragraph of paragraphs) {
    const box = textBox(passage(paragraph, setting.fonts), width, setting, options);
    if (!box) return null;
    boxes.push(box);
  }
  return stackLines(boxes, setting);
}

/** Paragraphs below each other at the leading of running text and a little more. */
export const stackLines = (boxes: readonly Box[], { fonts, measures }: Setting): Box =>
  stack(boxes, lineGap(fonts, measures) + measures.paragraphGap);

/** From the descenders of one line to the capitals of the next at the leading of running text. */
export function lineGap(fonts: FontLibrary, { em }: Measures): Millimetres {
  const { capHeight, descent } = fonts.metrics('regular');
  return em * (LEADING - (capHeight - descent) / 1000);
}
