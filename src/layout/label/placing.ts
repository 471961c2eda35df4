import type { Millimetres } from '../../quantity/length.ts';
import type { Die } from '../die/die.ts';
import type { Interval, Outline } from '../die/outline.ts';
import type { Box, Placed } from './box.ts';

/** The room of a die inside the margin of the layout. */
export interface Room {
  readonly die: Die;
  readonly margin: Millimetres;
  /** @param fall how far descenders hang below the band, into the margin */
  across(top: Millimetres, bottom: Millimetres, fall?: Millimetres): Interval | null;
  down(left: Millimetres, right: Millimetres, fall?: Millimetres): Interval | null;
  /** Heights below something that the stock brings with it, where a block may start over the whole width again. */
  readonly resume?: readonly Millimetres[];
}

/** Distances from the cut. */
export interface Keep {
  /** Of the blocks. */
  readonly margin: Millimetres;
  /** That the press asks. */
  readonly safe: Millimetres;
  /** Left free at each side beyond the margin. */
  readonly aside: Millimetres;
}

/**
 * The room of an outline. A die without straight sides keeps the margin all round; one with rounded corners keeps it
 * at its sides, and at the corners the distance that the press asks, so that blocks stay flush.
 */
export function roomOf(outline: Outline, { margin, safe, aside }: Keep, round: boolean): Room {
  const { die, across, down } = outline;
  if (round) {
    return {
      die,
      margin,
      across: (top, bottom) => across(top, bottom, margin),
      down: (left, right) => down(left, right, margin),
    };
  }
  const straight = (found: Interval | null, size: Millimetres, edge: Millimetres): Interval | null => {
    if (!found) return null;
    const [from, to] = [Math.max(found.from, edge), Math.min(found.to, size - edge)];
    return to > from ? { from, to } : null;
  };
  const { width, height, overlap = 0 } = die;
  return {
    die,
    margin,
    across: (top, bottom, fall = 0) =>
      straight(across(top, bottom + fall, safe), width - overlap, margin + aside),
    down(left, right, fall = 0) {
      const found = down(left, right, safe);
      return straight(found && { from: found.from, to: found.to - fall }, height, margin);
    },
  };
}

const ROUNDS = 12;
const TOLERANCE = 1e-6;

/**
 * Puts a block as wide as the die is over the whole of its height, with its top or its bottom at a place. A block
 * that is narrowed grows in height, which may narrow it again. Null where it finds no room.
 */
function settle(
  make: (width: Millimetres) => Box | null,
  band: (height: Millimetres, fall: Millimetres) => Interval | null,
): { readonly box: Box; readonly room: Interval } | null {
  let [height, fall] = [0, 0];
  for (let round = 0; round < ROUNDS; round += 1) {
    const room = band(height, fall);
    const box = room && make(room.to - room.from);
    if (!room || !box) return null;
    if (box.height <= height + TOLERANCE && box.fall <= fall + TOLERANCE) return { box, room };
    [height, fall] = [Math.max(height, box.height), Math.max(fall, box.fall)];
  }
  return null;
}

/** A block with its top at a place, or below what stands in its way where it ends higher there. */
export function below(room: Room, top: Millimetres, make: (width: Millimetres) => Box | null): Placed | null {
  let best: Placed | null = null;
  for (const y of [top, ...(room.resume ?? []).filter(place => place > top)]) {
    const found = settle(make, height => room.across(y, y + height));
    if (found && (!best || y + found.box.height < best.y + best.box.height))
      best = { box: found.box, x: found.room.from, y };
  }
  return best;
}

/** A block with its last base line, or its lower edge, at a place; descenders hang into the margin. */
export function above(
  room: Room,
  bottom: Millimetres,
  make: (width: Millimetres) => Box | null,
): Placed | null {
  const found = settle(make, (height, fall) => room.across(bottom - height, bottom, fall));
  return found && { box: found.box, x: found.room.from, y: bottom - found.box.height + found.box.fall };
}
