import type { FaceName, FontLibrary, GlyphRun } from '../../text/glyph-run.ts';

const join = (runs: readonly GlyphRun[], face: FaceName): GlyphRun => ({
  face,
  text: runs.map(({ text }) => text).join(''),
  glyphs: runs.flatMap(({ glyphs }) => glyphs),
  advance: runs.reduce((sum, { advance }) => sum + advance, 0),
});

/**
 * Shapes word by word, so that the many trial lines of a fit cost little. Pairs across a space are not kerned,
 * in the trial and in the finished line alike.
 */
export function wordShaping(fonts: FontLibrary): FontLibrary {
  const runs = new Map<string, GlyphRun>();
  return {
    ...fonts,
    shape(text, face) {
      const key = `${face} ${text}`;
      const known = runs.get(key);
      if (known) return known;
      const words = text.split(/(?<=[ \u00a0])|(?=[ \u00a0])/u);
      const shaped = words.map(word => fonts.shape(word, face));
      const run = shaped.length === 1 ? shaped[0]! : join(shaped, face);
      runs.set(key, run);
      return run;
    },
  };
}
