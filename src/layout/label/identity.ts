import type { Millimetres } from '../../quantity/length.ts';
import { type Box, named, stack } from './box.ts';
import type { Paragraph, Section } from './content.ts';
import type { Making } from './parts.ts';
import { SIZES } from './styles.ts';
import { paragraphsBox, passage, textBox } from './text-block.ts';

/** Sizes of the product name, largest first. */
const NAME_SIZES = [SIZES.display, SIZES.large, SIZES.medium, SIZES.lead, SIZES.text] as const;

/** Product identifier and the maker's tagline; null where a word does not fit the width. */
export function identityBlock({ paragraphs }: Section, width: Millimetres, making: Making): Box | null {
  const align = making.centred ? 'centre' : 'left';
  const gap = making.measures.gap * 0.35;
  const others = paragraphsBox(
    paragraphs.filter(({ style }) => style !== 'name'),
    width,
    making,
    { align },
  );
  if (!others) return null;
  const most = making.display.name * making.measures.em - (others.height > 0 ? others.height + gap : 0);
  const boxes: Box[] = [];
  for (const paragraph of paragraphs.filter(({ style }) => style === 'name')) {
    const box = nameBox(paragraph, width, most, making);
    if (!box) return null;
    boxes.push(box);
  }
  return named('identity', { ...stack([...boxes, others], gap), width });
}

/**
 * The name at the largest size whose lines stay within the height meant for it, else at the size that takes least.
 * The height is the same for long and short names, and so the name does not set the size of the text; and it never
 * grows with the width, so that a wider die has no smaller text.
 */
function nameBox(paragraph: Paragraph, width: Millimetres, most: Millimetres, making: Making): Box | null {
  const { fonts, centred } = making;
  const text = passage(paragraph, fonts);
  let lowest: Box | null = null;
  for (const factor of NAME_SIZES) {
    const box = textBox(text, width, making, { factor, align: centred ? 'centre' : 'left' });
    if (!box) continue;
    if (box.height <= most) return box;
    if (!lowest || box.height < lowest.height) lowest = box;
  }
  return lowest;
}

/** What name and tagline take at least in the search for the size of the text. */
export const nameAllowance = (section: Section | undefined, { display, measures }: Making): Millimetres =>
  section?.paragraphs.some(({ style }) => style === 'name') ? display.reserve * measures.em : 0;
