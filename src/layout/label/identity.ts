import type { Millimetres } from '../../quantity/length.ts';
import { type Box, named, stack } from './box.ts';
import type { Paragraph, Section } from './content.ts';
import { LOGO_GAP } from './logo.ts';
import type { Making } from './parts.ts';
import { SIZES } from './styles.ts';
import { paragraphsBox, passage, textBox } from './text-block.ts';

/**
 * Sizes of the product name, largest first. The display size is of the name alone: where a long word does not fit at
 * it, it is less, and the label still has five sizes.
 */
const NAME_SIZES = [
  ...[1, 0.92, 0.84, 0.77, 0.7].map(part => part * SIZES.display),
  SIZES.large,
  SIZES.medium,
  SIZES.lead,
  SIZES.text,
] as const;

const gapOf = ({ measures }: Making): Millimetres => measures.gap * 0.35;

/** All but the name; null where a word does not fit the width. */
const taglineBox = ({ paragraphs }: Section, width: Millimetres, making: Making): Box | null =>
  paragraphsBox(
    paragraphs.filter(({ style }) => style !== 'name'),
    width,
    making,
    { align: making.centred ? 'centre' : 'left', ink: making.words },
  );

/** Product identifier and the maker's tagline; null where a word does not fit the width. */
export function identityBlock(section: Section, width: Millimetres, making: Making): Box | null {
  const { logo } = making;
  if (!logo) return wordsBlock(section, width, making);
  const words = wordsBlock(section, width - logo.width - LOGO_GAP, making);
  if (!words) return null;
  const place = { x: width - logo.width, width: logo.width, height: logo.width / logo.aspect };
  const height = Math.max(words.height, place.height);
  const fall = words.height >= place.height ? words.fall : 0;
  return named('identity', {
    width,
    height,
    fall,
    draw(sheet, x, y) {
      sheet.areas.push({ role: 'logo', ...place, x: x + place.x, y });
      words.draw(sheet, x, y);
    },
  });
}

function wordsBlock(section: Section, width: Millimetres, making: Making): Box | null {
  const boxes: (Box | null)[] = section.paragraphs
    .filter(({ style }) => style === 'name')
    .map(paragraph => nameBox(paragraph, width, making));
  boxes.push(taglineBox(section, width, making));
  if (boxes.some(box => !box)) return null;
  const block = { ...stack(boxes as Box[], gapOf(making)), width };
  return making.logo ? block : named('identity', block);
}

/**
 * The name at the largest size whose lines stay within the height meant for it, else at the size that takes least.
 * The height is the same for long and short names, and so the name does not set the size of the text; and it never
 * grows with the width, so that a wider die has no smaller text.
 */
function nameBox(paragraph: Paragraph, width: Millimetres, making: Making): Box | null {
  const { fonts, centred, words } = making;
  const most = making.display.name * making.measures.em;
  const text = passage(paragraph, fonts);
  let lowest: Box | null = null;
  for (const factor of NAME_SIZES) {
    const box = textBox(text, width, making, { factor, align: centred ? 'centre' : 'left', ink: words });
    if (!box) continue;
    if (box.height <= most) return box;
    if (!lowest || box.height < lowest.height) lowest = box;
  }
  return lowest;
}

/** What name and tagline take at least in the search for the size of the text; less with more width, never more. */
export function identityAllowance(
  section: Section | undefined,
  width: Millimetres,
  making: Making,
): Millimetres {
  const { display, measures } = making;
  // Once the size is settled, nothing is kept that is not used.
  if (display.reserve === 0 || !section?.paragraphs.some(({ style }) => style === 'name')) return 0;
  const { logo } = making;
  const room = logo ? width - logo.width - LOGO_GAP : width;
  const tagline = taglineBox(section, room, making)?.height ?? 0;
  return display.reserve * measures.em + (tagline > 0 ? tagline + gapOf(making) : 0);
}
