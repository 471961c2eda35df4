import { type Millimetres, toPoints } from '../../quantity/length.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import { runWidth } from '../../text/glyph-run.ts';
import type { Frame, FrameItem, PagedDocument, Tag } from '../frame.ts';
import { type Area, moveSegment } from '../label/box.ts';

/** Places of labels on a page, in millimetres from its upper left corner. */
export interface Places {
  readonly page: { readonly width: Millimetres; readonly height: Millimetres };
  readonly left: Millimetres;
  readonly top: Millimetres;
  readonly columns: number;
  readonly rows: number;
  readonly across: Millimetres;
  readonly down: Millimetres;
  /** First place that is used, counted from 0. */
  readonly first: number;
}

/** A label with its lot, or without one. */
export type LotOrNone = string | null;

/**
 * One document of many labels: each a copy of the same page at a place of the sheet, its lot in the window for it. No
 * cut line and no marks: the sheet is cut already.
 */
export function labelSheet(
  label: PagedDocument,
  areas: readonly Area[],
  lots: readonly LotOrNone[],
  places: Places,
  fonts: FontLibrary,
): PagedDocument {
  const [source] = label.frames;
  const printed = (source?.items ?? []).filter(
    ({ layer, kind }) => layer !== 'die' && layer !== 'coder' && kind !== 'art',
  );
  const window = areas.find(({ role }) => role === 'lot-window');
  const perPage = places.rows * places.columns;
  const pages: FrameItem[][] = [];
  const root: Tag = { type: 'Document', children: [], lang: label.language };
  for (const [at, lot] of lots.entries()) {
    const place = places.first + at;
    const page = Math.floor(place / perPage);
    const on = place % perPage;
    const x = places.left + (on % places.columns) * places.across;
    const y = places.top + Math.floor(on / places.columns) * places.down;
    const tags = new Map<Tag, Tag>();
    root.children.push(copyOf(label.root, tags, 'Sect'));
    const items = printed.map(item => movedTo(item, x, y, tags));
    if (lot !== null && window) items.push(lotIn(window, lot, x, y, root.children.at(-1)!, fonts));
    pages[page] = [...(pages[page] ?? []), ...items];
  }
  const { width, height } = places.page;
  const frames = pages.map((items): Frame => ({ width, height, bleed: 0, slug: 0, items }));
  return { ...label, frames, root };
}

function copyOf(tag: Tag, tags: Map<Tag, Tag>, type = tag.type): Tag {
  const copy: Tag = { ...tag, type, children: tag.children.map(child => copyOf(child, tags)) };
  tags.set(tag, copy);
  return copy;
}

function movedTo(item: FrameItem, dx: Millimetres, dy: Millimetres, tags: ReadonlyMap<Tag, Tag>): FrameItem {
  const { layer: _, ...rest } = item;
  const tag = typeof item.tag === 'string' ? item.tag : tags.get(item.tag)!;
  return rest.kind === 'path'
    ? { ...rest, tag, segments: rest.segments.map(segment => moveSegment(segment, dx, dy)) }
    : { ...rest, tag, x: rest.x + dx, y: rest.y + dy };
}

/** Height of the capitals of a lot, where the window has the room, in millimetres; common practice, no source. */
const CAPITALS: Millimetres = 3;

function lotIn(
  window: Area,
  lot: string,
  dx: Millimetres,
  dy: Millimetres,
  parent: Tag,
  fonts: FontLibrary,
): FrameItem {
  const run = fonts.shape(lot, 'regular');
  const { capHeight } = fonts.metrics('regular');
  const wanted = toPoints((Math.min(CAPITALS, window.height * 0.5) * 1000) / capHeight);
  const room = window.width * 0.92;
  const natural = runWidth(run, wanted);
  const size = natural > room ? (wanted * room) / natural : wanted;
  const capitals = (size * 25.4 * capHeight) / 72_000;
  const tag: Tag = { type: 'P', children: [] };
  parent.children.push(tag);
  return {
    kind: 'text',
    tag,
    run,
    size,
    ink: 'black',
    x: dx + window.x + (window.width - runWidth(run, size)) / 2,
    y: dy + window.y + (window.height + capitals) / 2,
  };
}
