import type { Millimetres } from '../../quantity/length.ts';
import type { FrameItem, Segment } from '../frame.ts';

/** A rectangle that a part of the label takes up, by the role of its section. */
export interface Area {
  readonly role: string;
  readonly x: Millimetres;
  readonly y: Millimetres;
  readonly width: Millimetres;
  readonly height: Millimetres;
}

/** Items with their extent; the origin is the upper left corner. */
export interface Box {
  readonly width: Millimetres;
  readonly height: Millimetres;
  readonly items: readonly FrameItem[];
  readonly areas: readonly Area[];
}

export const empty: Box = { width: 0, height: 0, items: [], areas: [] };

const moveSegment = (segment: Segment, dx: Millimetres, dy: Millimetres): Segment =>
  segment.map((part, at) =>
    typeof part === 'number' ? part + (at % 2 === 1 ? dx : dy) : part,
  ) as unknown as Segment;

const moveItem = (item: FrameItem, dx: Millimetres, dy: Millimetres): FrameItem =>
  item.kind === 'text'
    ? { ...item, x: item.x + dx, y: item.y + dy }
    : { ...item, segments: item.segments.map(segment => moveSegment(segment, dx, dy)) };

/** The box with its contents moved; its extent stays. */
export const move = (box: Box, dx: Millimetres, dy: Millimetres): Box =>
  dx === 0 && dy === 0
    ? box
    : {
        ...box,
        items: box.items.map(item => moveItem(item, dx, dy)),
        areas: box.areas.map(area => ({ ...area, x: area.x + dx, y: area.y + dy })),
      };

/** Boxes laid over each other at their own places. */
export const overlay = (boxes: readonly Box[], width: Millimetres, height: Millimetres): Box => ({
  width,
  height,
  items: boxes.flatMap(({ items }) => items),
  areas: boxes.flatMap(({ areas }) => areas),
});

/** Boxes below each other; empty ones take no gap. */
export function stack(boxes: readonly Box[], gap: Millimetres): Box {
  let y = 0;
  const placed: Box[] = [];
  for (const box of boxes.filter(({ height }) => height > 0)) {
    if (placed.length > 0) y += gap;
    placed.push(move(box, 0, y));
    y += box.height;
  }
  return overlay(placed, Math.max(0, ...placed.map(({ width }) => width)), y);
}

/** Gives the whole extent of a box a role. */
export const named = (role: string, box: Box): Box => ({
  ...box,
  areas: [...box.areas, { role, x: 0, y: 0, width: box.width, height: box.height }],
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

/** A filled black rule. */
export const rule = (width: Millimetres, height: Millimetres): Box => ({
  width,
  height,
  areas: [],
  items: [{ kind: 'path', tag: 'layout', segments: rectangle(0, 0, width, height), fill: 'black' }],
});
