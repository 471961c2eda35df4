import { breakOpportunities } from '../../text/break-opportunity.ts';
import type { FaceName, FontLibrary, GlyphRun } from '../../text/glyph-run.ts';
import { keepTogether } from '../../text/keep-together.ts';
import type { Paragraph } from './content.ts';
import { STYLES } from './styles.ts';

/** A part of a paragraph that no line end may cut, measured in thousandths of the em. */
export interface Word {
  readonly width: number;
  /** Space before the next word where that stands on the same line. */
  readonly gap: number;
  /** The line ends here. */
  readonly mandatory: boolean;
  readonly runs: readonly GlyphRun[];
  readonly space: GlyphRun | null;
}

/** A paragraph measured once for all sizes and widths. Pairs across a space are not kerned. */
export interface Measured {
  readonly paragraph: Paragraph;
  readonly words: readonly Word[];
  /** Sum of words and spaces. */
  readonly length: number;
  /** Widest word. */
  readonly widest: number;
  /** Words at which the text may go on in another column. */
  readonly starts: readonly number[];
  /** Number or bullet with its space. */
  readonly marker: { readonly run: GlyphRun; readonly width: number } | null;
  readonly face: FaceName;
}

const known = new WeakMap<FontLibrary, WeakMap<Paragraph, Measured>>();

/** Measures a paragraph. @throws MissingGlyphError */
export function measured(paragraph: Paragraph, fonts: FontLibrary): Measured {
  const cache = known.get(fonts) ?? new WeakMap<Paragraph, Measured>();
  known.set(fonts, cache);
  const found = cache.get(paragraph);
  if (found) return found;
  const made = measure(paragraph, fonts);
  cache.set(paragraph, made);
  return made;
}

function measure(paragraph: Paragraph, fonts: FontLibrary): Measured {
  const { face } = STYLES[paragraph.style];
  const spans = paragraph.spans.map(span => ({ text: span.text, face: face ?? span.face }));
  const text = keepTogether(spans.map(span => span.text).join(''));
  const pieces = breakOpportunities(text).filter(piece => piece.end > piece.start || piece.mandatory);
  const words = pieces.map((piece): Word => {
    const runs: GlyphRun[] = [];
    let from = 0;
    for (const span of spans) {
      const to = from + span.text.length;
      const part = text.slice(Math.max(piece.start, from), Math.min(piece.end, to));
      if (part !== '' && from < piece.end && to > piece.start) runs.push(shaped(part, span.face, fonts));
      from = to;
    }
    const last = runs.at(-1)?.face ?? 'regular';
    const space = piece.next > piece.end && !piece.mandatory ? fonts.shape(' ', last) : null;
    const width = runs.reduce((sum, run) => sum + run.advance, 0);
    return { runs, space, width, gap: space?.advance ?? 0, mandatory: piece.mandatory };
  });
  const starts = paragraph.starts
    .map(place => pieces.findIndex(piece => piece.start >= place))
    .filter(place => place > 0);
  const marker = paragraph.marker && fonts.shape(paragraph.marker.text, 'regular');
  return {
    paragraph,
    words,
    length: words.reduce((sum, word) => sum + word.width + word.gap, 0),
    widest: Math.max(0, ...words.map(({ width }) => width)),
    starts,
    marker: marker && { run: marker, width: marker.advance + fonts.shape(' ', 'regular').advance },
    face: face ?? 'regular',
  };
}

const SUBSCRIPT_TWO = '\u2082';

/** A run in which carbon dioxide has its subscript; readers of the file still find `CO2`. */
function shaped(text: string, face: FaceName, fonts: FontLibrary): GlyphRun {
  if (!/\bCO2\b/u.test(text)) return fonts.shape(text, face);
  const run = fonts.shape(text.replace(/\bCO2\b/gu, `CO${SUBSCRIPT_TWO}`), face);
  const glyphs = run.glyphs.map(glyph => (glyph.text === SUBSCRIPT_TWO ? { ...glyph, text: '2' } : glyph));
  return { ...run, text, glyphs };
}

const join = (runs: readonly GlyphRun[], face: FaceName): GlyphRun => ({
  face,
  text: runs.map(({ text }) => text).join(''),
  glyphs: runs.flatMap(({ glyphs }) => glyphs),
  advance: runs.reduce((sum, { advance }) => sum + advance, 0),
});

/** The words of a line as one run for each face. */
export function lineRuns(words: readonly Word[]): readonly GlyphRun[] {
  const groups: { face: FaceName; runs: GlyphRun[] }[] = [];
  for (const [at, word] of words.entries()) {
    const parts = at < words.length - 1 && word.space ? [...word.runs, word.space] : word.runs;
    for (const run of parts) {
      const last = groups.at(-1);
      if (last?.face === run.face) last.runs.push(run);
      else groups.push({ face: run.face, runs: [run] });
    }
  }
  return groups.map(({ face, runs }) => join(runs, face));
}
