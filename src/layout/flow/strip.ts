import type { Millimetres, Points } from '../../quantity/length.ts';
import type { TextLine } from '../../text/break-lines.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import type { ArtifactKind, FrameItem, Ink, Segment, Tag } from '../frame.ts';

/** A slice of the flow that no page break divides; its items count from its upper left corner. */
export interface Strip {
  readonly height: Millimetres;
  /** Space above, left out at the head of a page. */
  readonly before: Millimetres;
  /** No page break between this strip and the next. */
  readonly keep: boolean;
  readonly items: readonly FrameItem[];
  /** Shown again above this strip where a page begins with it, as an artifact: the head of a table. */
  readonly repeat: Strip | null;
}

export const strip = (
  height: Millimetres,
  items: readonly FrameItem[] = [],
  more: Partial<Strip> = {},
): Strip => ({
  height,
  before: 0,
  keep: false,
  repeat: null,
  items,
  ...more,
});

const moveSegment = (segment: Segment, dx: Millimetres, dy: Millimetres): Segment =>
  segment.map((part, at) =>
    typeof part === 'number' ? part + (at % 2 === 1 ? dx : dy) : part,
  ) as unknown as Segment;

/** An item moved by a distance. */
export const moved = (item: FrameItem, dx: Millimetres, dy: Millimetres): FrameItem =>
  item.kind === 'path'
    ? { ...item, segments: item.segments.map(segment => moveSegment(segment, dx, dy)) }
    : { ...item, x: item.x + dx, y: item.y + dy };

/** The first strip with space above it. */
export const spaced = (strips: readonly Strip[], before: Millimetres): readonly Strip[] =>
  strips.map((part, at) => (at === 0 ? { ...part, before: part.before + before } : part));

/** Total height, without the space above the first. */
export const totalHeight = (strips: readonly Strip[]): Millimetres =>
  strips.reduce((sum, { height, before }, at) => sum + height + (at === 0 ? 0 : before), 0);

/** All strips as one that no page break divides. */
export function joined(strips: readonly Strip[], more: Partial<Strip> = {}): Strip {
  let y = 0;
  const items: FrameItem[] = [];
  for (const [at, part] of strips.entries()) {
    if (at > 0) y += part.before;
    items.push(...part.items.map(item => moved(item, 0, y)));
    y += part.height;
  }
  return strip(y, items, { before: strips[0]?.before ?? 0, ...more });
}

/** The items of a strip as an artifact, for a repeated head. */
export const asArtifact = (part: Strip): Strip => ({
  ...part,
  items: part.items.map(item => ({ ...item, tag: 'layout' as ArtifactKind })),
});

/** How the lines of a paragraph are set. */
export interface LineStyle {
  readonly fonts: FontLibrary;
  readonly size: Points;
  readonly leading: Millimetres;
  readonly ink: Ink;
  readonly x: Millimetres;
  readonly tag: Tag | ArtifactKind;
}

/** Base line of a line of text from its top, with the same room above the ascenders as below the descenders. */
export function baseline({
  fonts,
  size,
  leading,
}: Pick<LineStyle, 'fonts' | 'size' | 'leading'>): Millimetres {
  const { ascent, descent } = fonts.metrics('regular');
  const perMille = (size * 25.4) / 72_000;
  return (leading - (ascent - descent) * perMille) / 2 + ascent * perMille;
}

/** Lines of a paragraph as strips; at least two of them stay together on either side of a page break. */
export function lineStrips(lines: readonly TextLine[], style: LineStyle): readonly Strip[] {
  const y = baseline(style);
  return lines.map((line, at) => {
    const items = line.runs.map(
      ({ run, size, x }): FrameItem => ({
        kind: 'text',
        tag: style.tag,
        ink: style.ink,
        run,
        size,
        x: style.x + x,
        y,
      }),
    );
    const left = lines.length - 1 - at;
    return strip(style.leading, items, { keep: left > 0 && (at === 0 || left === 1) });
  });
}
