import type { Millimetres } from '../../quantity/length.ts';
import { type Box, named, stack } from './box.ts';
import type { Paragraph, Section } from './content.ts';
import type { Making } from './parts.ts';
import { SIZES } from './styles.ts';
import { paragraphsBox, passage, textBox } from './text-block.ts';

/** Sizes of the product name, largest first. Below the second it is a name too long for its label. */
const NAME_SIZES = [SIZES.display, SIZES.large, SIZES.medium, SIZES.lead, SIZES.text] as const;

/** Product identifier and the maker's tagline; null where a word does not fit the width. */
export function identityBlock({ paragraphs }: Section, width: Millimetres, making: Making): Box | null {
  const align = making.centred ? 'centre' : 'left';
  const boxes: Box[] = [];
  for (const paragraph of paragraphs) {
    const box =
      paragraph.style === 'name'
        ? nameBox(paragraph, width, making)
        : paragraphsBox([paragraph], width, making, { align });
    if (!box) return null;
    boxes.push(box);
  }
  return named('identity', { ...stack(boxes, making.measures.gap * 0.35), width });
}

/**
 * The name at the largest size whose lines stay within the height meant for it. The height is the same for long and
 * short names: the name does not set the size of the text.
 */
function nameBox(paragraph: Paragraph, width: Millimetres, making: Making): Box | null {
  const { fonts, measures, display, centred } = making;
  const most = display.name * measures.em;
  const text = passage(paragraph, fonts);
  let last: Box | null = null;
  for (const factor of NAME_SIZES) {
    const box = textBox(text, width, making, { factor, align: centred ? 'centre' : 'left' });
    if (!box) continue;
    if (box.height <= most) return box;
    if (factor <= SIZES.medium) {
      last ??= box;
      break;
    }
  }
  return last;
}

/** What the name takes at least in the search for the size of the text. */
export const nameAllowance = (section: Section | undefined, { display, measures }: Making): Millimetres =>
  section?.paragraphs.some(({ style }) => style === 'name') ? display.reserve * measures.em : 0;
