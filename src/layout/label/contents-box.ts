import type { Millimetres } from '../../quantity/length.ts';
import { type Box, overlay } from './box.ts';
import type { Section } from './content.ts';
import type { Making } from './parts.ts';
import { STYLES } from './styles.ts';
import { paragraphsBox } from './text-block.ts';

/**
 * The net contents. A declaration keeps the height of its lettering free above and below (16 CFR 500.6(b)); at the
 * lower edge the margin does.
 */
export function contentsBox({ paragraphs }: Section, width: Millimetres, making: Making): Box | null {
  const box = paragraphsBox(paragraphs, width, making);
  if (!box || !paragraphs.some(({ style }) => style === 'declaration')) return box;
  const { fonts, measures } = making;
  const clear = (measures.em * STYLES.declaration.factor * fonts.metrics('bold').capHeight) / 1000;
  return overlay([{ box, x: 0, y: clear }], box.width, box.height + clear, box.fall);
}
