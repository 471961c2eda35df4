import type { Millimetres } from '../../quantity/length.ts';
import type { Die } from '../die/die.ts';
import type { Interval } from '../die/outline.ts';
import type { FrameItem } from '../frame.ts';
import { FRAME_COVER } from '../roll-printer.ts';
import type { RedFrame, Stock } from '../stock.ts';
import type { PictogramFigure } from './content.ts';
import type { FactBox } from './facts.ts';
import { moved, square, symbolOf } from './pictogram.ts';
import type { Room } from './placing.ts';

/** A frame as the layout sees it: the square round its corners, from the upper left corner of the label. */
interface Corner {
  readonly x: Millimetres;
  readonly y: Millimetres;
  readonly size: Millimetres;
}

const cornerOf = ({ left, bottom, side }: RedFrame, { height }: Die): Corner => {
  const size = side * Math.SQRT2;
  return { x: left, y: height - bottom - size, size };
};

/** Whether something stands at a fixed place of the label, which the layout goes round. */
export const hasFixed = ({ redFrames = [], eyeMark }: Stock): boolean =>
  redFrames.length > 0 || Boolean(eyeMark);

/** The room beside preprinted frames and the eye mark, and where a block may start again below them. */
export function besideFixed(room: Room, stock: Stock, gap: Millimetres): Room {
  if (!hasFixed(stock)) return room;
  const { die, redFrames = [], eyeMark } = stock;
  const frames = redFrames.map(frame => {
    const { x, y, size } = cornerOf(frame, die);
    return { x, y, width: size, height: size };
  });
  if (eyeMark) frames.push({ ...eyeMark, x: eyeMark.left, y: die.height - eyeMark.bottom - eyeMark.height });
  return {
    ...room,
    resume: [...new Set(frames.map(({ y, height }) => y + height + gap))].sort((a, b) => a - b),
    across(top, bottom, fall) {
      const whole = room.across(top, bottom, fall);
      const met = frames.filter(({ y, height }) => y - gap < bottom - 1e-9 && y + height + gap > top + 1e-9);
      return (
        whole &&
        widest(
          whole,
          met.map(({ x, width }) => ({ from: x - gap, to: x + width + gap })),
        )
      );
    },
  };
}

/** The widest stretch that is left free. */
function widest(whole: Interval, taken: readonly Interval[]): Interval | null {
  const sorted = [...taken].sort((a, b) => a.from - b.from);
  let from = whole.from;
  let best: Interval | null = null;
  for (const { from: start, to: end } of [...sorted, { from: whole.to, to: whole.to }]) {
    const to = Math.min(start, whole.to);
    if (to > from && (!best || to - from > best.to - best.from)) best = { from, to };
    from = Math.max(from, end);
  }
  return best;
}

/**
 * What is printed into preprinted frames: a symbol each, in their order, and black over every frame that is left, since
 * a red frame without a symbol is not permitted (29 CFR 1910.1200 App. C, C.2.3.1).
 */
export function inFrames(
  pictograms: readonly PictogramFigure[],
  { die, redFrames = [] }: Stock,
): readonly FrameItem[] {
  return redFrames.flatMap((frame, at): FrameItem[] => {
    const { x, y, size } = cornerOf(frame, die);
    const pictogram = pictograms[at];
    if (pictogram) return [moved(symbolOf(pictogram, size), x, y)];
    // The black stops short of the frames beside: squares set at a point touch where their distances add up.
    const between = redFrames
      .filter((_, other) => other !== at)
      .map(beside => {
        const next = cornerOf(beside, die);
        const [dx, dy] = [next.x + (next.size - size) / 2 - x, next.y + (next.size - size) / 2 - y];
        return Math.abs(dx) + Math.abs(dy) - next.size / 2;
      });
    const reach = Math.min(size / 2 + FRAME_COVER * Math.SQRT2, ...between);
    const black: FrameItem = { kind: 'path', tag: 'background', segments: square(0, reach), fill: 'black' };
    return [moved(black, x + size / 2, y + size / 2)];
  });
}

/** Box of a frame round its corners, from the lower left corner of the label. */
export const frameBox = ({ left, bottom, side }: RedFrame): FactBox => {
  const size = side * Math.SQRT2;
  const rounded = (value: number) => Number(value.toFixed(3));
  return [rounded(left), rounded(bottom), rounded(left + size), rounded(bottom + size)];
};

/** How far the hazard panel stands from the nearest frame that holds a symbol; 0 where it lies beside one. */
export function apart(
  panel: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
  count: number,
  { die, redFrames = [] }: Stock,
): Millimetres {
  const distances = redFrames.slice(0, count).map(frame => {
    const { x, y, size } = cornerOf(frame, die);
    const gap = (from: number, to: number, start: number, end: number) => Math.max(0, start - to, from - end);
    return Math.hypot(
      gap(panel.x, panel.x + panel.width, x, x + size),
      gap(panel.y, panel.y + panel.height, y, y + size),
    );
  });
  return distances.length === 0 ? 0 : Math.min(...distances);
}
