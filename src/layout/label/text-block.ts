import { type Millimetres, type Points, toMillimetres } from '../../quantity/length.ts';
import { breakLines, type TextLine, textWidth } from '../../text/break-lines.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import type { TextItem } from '../frame.ts';
import type { Box } from './box.ts';
import type { Paragraph } from './content.ts';
import type { Measures } from './measures.ts';
import { factorOf, STYLES } from './styles.ts';

/** A line of text with what a column needs to know of it; the base line is at 0. */
export interface SetLine {
  readonly items: readonly TextItem[];
  readonly width: Millimetres;
  /** Base line to base line. */
  readonly leading: Millimetres;
  /** Above the base line of a first line: the height of capitals. */
  readonly rise: Millimetres;
  /** Below the base line. */
  readonly fall: Millimetres;
  /** Additional space above where the line does not head a column. */
  readonly before: Millimetres;
  readonly paragraph: Paragraph;
  /** Place in the paragraph and number of its lines. */
  readonly at: number;
  readonly of: number;
}

/** A word had to be cut: the column is too narrow for the text. */
export class TooNarrow extends Error {}

export interface Setting {
  readonly fonts: FontLibrary;
  readonly measures: Measures;
}

export interface SetOptions {
  /** Instead of the size of the style. */
  readonly size?: Points;
  readonly align?: 'left' | 'centre' | 'right';
}

/**
 * Breaks a paragraph into lines.
 * @throws TooNarrow where a word does not fit on a line
 */
export function setParagraph(
  paragraph: Paragraph,
  width: Millimetres,
  { fonts, measures }: Setting,
  { size = measures.size * factorOf(paragraph.style, measures.display), align = 'left' }: SetOptions = {},
): SetLine[] {
  const { face, leading } = STYLES[paragraph.style];
  const spans = paragraph.spans.map(span => ({ ...span, face: face ?? span.face }));
  const em = toMillimetres(size);
  const indent = paragraph.marker ? textWidth(fonts, `${paragraph.marker.text} `, 'regular', size) : 0;
  const lines = breakLines(spans, width, { fonts, size, firstIndent: indent, indent });
  if (lines.some(({ forced }) => forced)) throw new TooNarrow();
  const metrics = fonts.metrics(face ?? 'regular');
  return lines.map((line, at) => {
    const shift = align === 'left' ? 0 : (width - line.width) * (align === 'centre' ? 0.5 : 1);
    return {
      items: [...markerItems(paragraph, at, size, fonts), ...runItems(line, paragraph, shift)],
      width: line.indent + line.width,
      leading: em * leading,
      rise: (em * metrics.capHeight) / 1000,
      fall: (em * -metrics.descent) / 1000,
      before: at === 0 ? measures.paragraphGap : 0,
      paragraph,
      at,
      of: lines.length,
    };
  });
}

function markerItems({ marker }: Paragraph, at: number, size: Points, fonts: FontLibrary): TextItem[] {
  if (!marker || at > 0) return [];
  const run = fonts.shape(marker.text, 'regular');
  return [{ kind: 'text', x: 0, y: 0, size, run, ink: 'black', tag: marker.tag }];
}

const runItems = (line: TextLine, { tag }: Paragraph, shift: Millimetres): TextItem[] =>
  line.runs.map(({ run, size, x }) => ({ kind: 'text', x: x + shift, y: 0, size, run, ink: 'black', tag }));

/** Lines below each other; the box begins at the top of the capitals and ends below the descenders. */
export function linesBox(lines: readonly SetLine[], width?: Millimetres): Box {
  let baseline = 0;
  const items: TextItem[] = [];
  for (const [index, line] of lines.entries()) {
    baseline += index === 0 ? line.rise : line.leading + line.before;
    for (const item of line.items) items.push({ ...item, y: baseline });
  }
  const last = lines.at(-1);
  return {
    width: width ?? Math.max(0, ...lines.map(line => line.width)),
    height: last ? baseline + last.fall : 0,
    items,
    areas: [],
  };
}

/** Paragraphs below each other in one column. @throws TooNarrow */
export const paragraphsBox = (
  paragraphs: readonly Paragraph[],
  width: Millimetres,
  setting: Setting,
  options?: SetOptions,
): Box =>
  linesBox(
    paragraphs.flatMap(paragraph => setParagraph(paragraph, width, setting, options)),
    options?.align && options.align !== 'left' ? width : undefined,
  );
