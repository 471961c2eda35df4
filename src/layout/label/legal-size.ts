import type { TypeRules } from '../../document/type-rules.ts';
import type { Millimetres } from '../../quantity/length.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import type { LabelContent } from './content.ts';
import { roleOf } from './roles.ts';
import { STYLES } from './styles.ts';

/** So that rounding to the grid of the page leaves nothing under a least height. */
const CLEAR = 1 + 1e-4;

/**
 * The least x-height of running text at which every text of a label has the height that the law asks; 0 where it asks
 * none. The sizes of a label grow together, so one text may set the size of all.
 */
export function legalXHeight(
  { sections }: LabelContent,
  { least }: TypeRules,
  fonts: FontLibrary,
): Millimetres {
  const running = fonts.metrics('regular');
  const needs = sections.flatMap(({ role, paragraphs }) =>
    paragraphs.map(({ style }): number => {
      const rule = least[roleOf(style, role)];
      if (!rule) return 0;
      const { factor, face } = STYLES[style];
      const metrics = fonts.metrics(face ?? 'regular');
      const em = Math.max((rule.capHeight ?? 0) / metrics.capHeight, (rule.xHeight ?? 0) / metrics.xHeight);
      return (em / factor) * running.xHeight;
    }),
  );
  return Math.max(0, ...needs) * CLEAR;
}
