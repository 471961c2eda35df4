import type { Frame, FrameItem, Segment } from './frame.ts';

/** Grid of the finished page: a tenth of a micrometre, finer than any plate setter, so that bars keep their widths. */
const PER_MILLIMETRE = 10_000;

const snap = (value: number): number => Math.round(value * PER_MILLIMETRE) / PER_MILLIMETRE + 0;

const snapSegment = (segment: Segment): Segment =>
  segment.map(part => (typeof part === 'number' ? snap(part) : part)) as unknown as Segment;

function snapItem(item: FrameItem): FrameItem {
  if (item.kind === 'path') return { ...item, segments: item.segments.map(snapSegment) };
  const [x, y] = [snap(item.x), snap(item.y)];
  if (item.kind === 'text') return { ...item, x, y, size: snap(item.size) };
  return { ...item, x, y, width: snap(item.width), height: snap(item.height) };
}

/** Rounds a finished frame: the only rounding of the layout, done last. */
export const snapFrame = (frame: Frame): Frame => ({ ...frame, items: frame.items.map(snapItem) });
