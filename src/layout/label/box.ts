import type { Millimetres } from '../../quantity/length.ts';
import type { FrameItem, Segment } from '../frame.ts';

/** A rectangle that a part of the label takes up, by the role of its section. */
export interface Area {
  readonly role: string;
  readonly x: Millimetres;
  readonly y: Millimetres;
  readonly width: Millimetres;
  readonly height: Millimetres;
  /** Its contents stand a quarter turned. */
  readonly turned?: boolean;
}

/** What a drawn label consists of, in millimetres from the upper left corner of the trim. */
export interface Sheet {
  readonly items: FrameItem[];
  readonly areas: Area[];
}

/** A part of the label whose extent is known and that is drawn only once its place is settled. */
export interface Box {
  readonly width: Millimetres;
  readonly height: Millimetres;
  /** Below the last base line: how far descenders reach; 0 where the box ends in a base line or a rule. */
  readonly fall: Millimetres;
  draw(sheet: Sheet, x: Millimetres, y: Millimetres): void;
}

export const empty: Box = { width: 0, height: 0, fall: 0, draw: () => undefined };

/** A box at a place of its own. */
export interface Placed {
  readonly box: Box;
  readonly x: Millimetres;
  readonly y: Millimetres;
}

/** Boxes laid over each other at their own places. */
export const overlay = (
  placed: readonly Placed[],
  width: Millimetres,
  height: Millimetres,
  fall: Millimetres = 0,
): Box => ({
  width,
  height,
  fall,
  draw(sheet, x, y) {
    for (const part of placed) part.box.draw(sheet, x + part.x, y + part.y);
  },
});

/** Boxes below each other; empty ones take no gap. */
export function stack(boxes: readonly Box[], gap: Millimetres): Box {
  let y = 0;
  let fall = 0;
  const placed: Placed[] = [];
  for (const box of boxes) {
    if (box.height <= 0) continue;
    if (placed.length > 0) y += gap;
    placed.push({ box, x: 0, y });
    y += box.height;
    fall = box.fall;
  }
  return overlay(placed, Math.max(0, ...placed.map(({ box }) => box.width)), y, fall);
}

/** Gives the whole extent of a box a role. */
export const named = (role: string, box: Box, turned = false): Box => ({
  ...box,
  draw(sheet, x, y) {
    sheet.areas.push({ role, x, y, width: box.width, height: box.height, turned });
    box.draw(sheet, x, y);
  },
});

/** A closed rectangle as path segments. */
export const rectangle = (
  x: Millimetres,
  y: Millimetres,
  width: Millimetres,
  height: Millimetres,
): readonly Segment[] => [
  ['M', x, y],
  ['L', x + width, y],
  ['L', x + width, y + height],
  ['L', x, y + height],
  ['Z'],
];

/** A segment moved by a distance. */
export const moveSegment = (segment: Segment, dx: Millimetres, dy: Millimetres): Segment =>
  segment.map((part, at) =>
    typeof part === 'number' ? part + (at % 2 === 1 ? dx : dy) : part,
  ) as unknown as Segment;

/** Items that are made at the upper left corner and moved when drawn. */
export const drawn = (width: Millimetres, height: Millimetres, make: () => readonly FrameItem[]): Box => ({
  width,
  height,
  fall: 0,
  draw(sheet, dx, dy) {
    for (const item of make())
      sheet.items.push(
        item.kind === 'path'
          ? { ...item, segments: item.segments.map(segment => moveSegment(segment, dx, dy)) }
          : { ...item, x: item.x + dx, y: item.y + dy },
      );
  },
});

/** A filled black rule. */
export const rule = (width: Millimetres, height: Millimetres): Box =>
  drawn(width, height, () => [
    { kind: 'path', tag: 'layout', segments: rectangle(0, 0, width, height), fill: 'black' },
  ]);
