import type { Millimetres } from '../../quantity/length.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import { barCodeBox } from './bar-code-block.ts';
import { orientations } from './bar-code-sizes.ts';
import { measured } from './measured.ts';
import type { Measures } from './measures.ts';
import type { Parts } from './parts.ts';
import { LEADING, STYLES } from './styles.ts';

/** Lines are never full: what text takes at least, as part of its lines end to end. */
const FULL = 0.9;

/**
 * What the parts cover at least at a size of text, in square millimetres: no die of a smaller area inside the margin
 * needs to be tried.
 */
export function leastArea(parts: Parts, measures: Measures, fonts: FontLibrary): number {
  const { placed, barCode, profile } = parts;
  const sections = [...Object.values(placed).filter(({ role }) => role !== 'draft'), ...parts.flow];
  const text = sections
    .flatMap(({ paragraphs }) => paragraphs)
    .reduce((sum, paragraph) => {
      const em: Millimetres = measures.em * (paragraph.style === 'name' ? 1 : STYLES[paragraph.style].factor);
      return sum + (measured(paragraph, fonts).length / 1000) * em * em * LEADING;
    }, 0);
  const pictograms = (placed.hazard?.pictograms.length ?? 0) * (measures.pictogram ** 2 / 2);
  const [way] = barCode ? orientations(barCode, 0) : [];
  const bars = barCode && way ? barCodeBox(barCode, way, measures.margin, fonts) : null;
  const { width, height } = parts.lotWindow ?? profile.lotWindow.minimum;
  const lot = placed.lot ? width * height : 0;
  return text * FULL + pictograms + (bars ? bars.width * bars.height : 0) + lot;
}
