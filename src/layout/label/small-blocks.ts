import type { Millimetres } from '../../quantity/length.ts';
import { type TextSpan, textWidth } from '../../text/break-lines.ts';
import { type Box, empty, move, named, overlay, rectangle, stack } from './box.ts';
import type { Section } from './content.ts';
import { factorOf } from './styles.ts';
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
  const pieces = section.paragraphs.flatMap(({ spans }) => splitAtLineFeeds(spans));
  const size = setting.measures.size * factorOf(first.style, setting.measures.display);
  const widthOf = (spans: readonly TextSpan[]) =>
    spans.reduce((sum, { text, face }) => sum + textWidth(setting.fonts, text, face, size), 0);
  const dot: TextSpan = { text: ' · ', face: 'regular' };
  const lines: TextSpan[][] = [];
  for (const piece of pieces) {
    const line = lines.at(-1);
    const longer = line && [...line, dot, ...piece];
    // A line of an address stays whole, and no dot stands at the end of a line.
    if (longer && widthOf(longer) <= width) lines.splice(-1, 1, longer);
    else lines.push([...piece]);
  }
  const feed: TextSpan = { text: '\n', face: 'regular' };
  const spans = lines.flatMap((line, at) => (at === 0 ? line : [feed, ...line]));
  return named(section.role, linesBox(setParagraph({ ...first, spans }, width, setting)));
}

/** The runs of each line as the record breaks it. */
function splitAtLineFeeds(spans: readonly TextSpan[]): readonly (readonly TextSpan[])[] {
  const pieces: TextSpan[][] = [[]];
  for (const span of spans) {
    for (const [at, text] of span.text.split('\n').entries()) {
      if (at > 0) pieces.push([]);
      if (text !== '') pieces.at(-1)!.push({ ...span, text });
    }
  }
  return pieces.filter(piece => piece.length > 0);
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
