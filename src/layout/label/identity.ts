import type { Millimetres, Points } from '../../quantity/length.ts';
import { type Box, named, stack } from './box.ts';
import type { Paragraph, Section } from './content.ts';
import {
  linesBox,
  paragraphsBox,
  type SetLine,
  type Setting,
  setParagraph,
  TooNarrow,
} from './text-block.ts';

/** Least size of the product name in times the running text. */
const LEAST = 1.7;
const STEPS = 12;

/** Product identifier, as large as the scale allows, and the maker's tagline. @throws TooNarrow */
export function identityBlock({ paragraphs }: Section, width: Millimetres, setting: Setting): Box {
  const { measures } = setting;
  const parts = paragraphs.map(paragraph =>
    paragraph.style === 'name'
      ? linesBox(nameLines(paragraph, width, setting))
      : paragraphsBox([paragraph], width, setting),
  );
  return named('identity', { ...stack(parts, measures.gap * 0.55), width });
}

/** One line as large as it goes; two where one would be small. */
function nameLines(paragraph: Paragraph, width: Millimetres, setting: Setting): readonly SetLine[] {
  const { measures } = setting;
  for (const [most, least] of [
    [1, measures.nameFactor * 0.72],
    [2, measures.nameFactor * 0.55],
    [4, LEAST],
  ] as const) {
    for (let step = 0; step <= STEPS; step += 1) {
      const factor = measures.nameFactor + ((least - measures.nameFactor) * step) / STEPS;
      const lines = attempt(paragraph, width, setting, measures.size * factor);
      if (lines && lines.length <= most) return lines;
    }
  }
  throw new TooNarrow();
}

function attempt(
  paragraph: Paragraph,
  width: Millimetres,
  setting: Setting,
  size: Points,
): readonly SetLine[] | null {
  try {
    return setParagraph(paragraph, width, setting, { size });
  } catch (error) {
    if (error instanceof TooNarrow) return null;
    throw error;
  }
}
