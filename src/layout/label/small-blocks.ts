import type { Millimetres } from '../../quantity/length.ts';
import { type Box, empty, move, named, overlay, rectangle, stack } from './box.ts';
import type { Section } from './content.ts';
import { linesBox, paragraphsBox, type SetLine, type Setting, setParagraph } from './text-block.ts';

/** Framed strip over the width with the notice that this is a draft. @throws TooNarrow */
export function draftStrip(section: Section, width: Millimetres, setting: Setting): Box {
  const { xHeight, thin } = setting.measures;
  const padding = 0.75 * xHeight;
  const text = paragraphsBox(section.paragraphs, width - 2 * padding, setting, { align: 'centre' });
  const height = text.height + 2 * padding - 0.25 * xHeight;
  const frame: Box = {
    width,
    height,
    areas: [],
    items: [
      {
        kind: 'path',
        tag: 'layout',
        segments: rectangle(thin / 2, thin / 2, width - thin, height - thin),
        stroke: 'black',
        strokeWidth: thin,
      },
    ],
  };
  return named('draft', overlay([frame, move(text, padding, padding)], width, height));
}

/** Window of a clear size that the coder prints lot and date into: nothing stands in it. @throws TooNarrow */
export function lotWindow(section: Section, setting: Setting, clear: Size): Box {
  const { thin, gap } = setting.measures;
  const caption = paragraphsBox(section.paragraphs, clear.width, setting);
  const width = Math.max(clear.width, caption.width);
  const frame: Box = {
    width,
    height: clear.height,
    areas: [{ role: 'lot-window', x: 0, y: 0, width, height: clear.height }],
    items: [
      {
        kind: 'path',
        tag: 'layout',
        // The line lies outside the clear area.
        segments: rectangle(-thin / 2, -thin / 2, width + thin, clear.height + thin),
        stroke: 'black',
        strokeWidth: thin,
      },
    ],
  };
  const framed = { ...move(frame, thin, thin), width: width + 2 * thin, height: clear.height + 2 * thin };
  return named('lot', stack([caption, framed], gap * 0.3));
}

interface Size {
  readonly width: Millimetres;
  readonly height: Millimetres;
}

/** A section as running text over the width, its lines and paragraphs parted by middle dots. @throws TooNarrow */
export function runningSection(section: Section, width: Millimetres, setting: Setting): Box {
  const [first] = section.paragraphs;
  if (!first) return empty;
  const spans = section.paragraphs.flatMap((paragraph, at) => {
    const parted =
      at === 0 ? paragraph.spans : [{ text: '\n', face: 'regular' as const }, ...paragraph.spans];
    return parted.map(span => ({ ...span, text: span.text.replaceAll('\n', ' · ') }));
  });
  return named(section.role, linesBox(setParagraph({ ...first, spans }, width, setting)));
}

/** A section as a plain block of text. @throws TooNarrow */
export const textSection = (section: Section | undefined, width: Millimetres, setting: Setting): Box =>
  section ? named(section.role, paragraphsBox(section.paragraphs, width, setting)) : empty;

/** The flowing sections as lines; the first line of each section keeps more distance. @throws TooNarrow */
export function flowLines(sections: readonly Section[], width: Millimetres, setting: Setting): SetLine[] {
  const { gap } = setting.measures;
  return sections.flatMap((section, index) =>
    section.paragraphs.flatMap((paragraph, at) => {
      const lines = setParagraph(paragraph, width, setting);
      const before = index > 0 && at === 0 ? gap * 0.8 : afterHeading(section, at) ? 0 : undefined;
      return lines.map((line, place) => (place === 0 && before !== undefined ? { ...line, before } : line));
    }),
  );
}

const afterHeading = ({ paragraphs }: Section, at: number): boolean =>
  at > 0 && (paragraphs[at - 1]?.style === 'heading' || paragraphs[at]?.style === 'item');
