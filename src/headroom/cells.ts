import type Fraction from 'fraction.js';

/** A place where a comparison turns: about where, how far off that may be, and exactly (null where there is none). */
export interface Turn {
  readonly near: number;
  readonly error: number;
  exact(): Fraction | null;
}

/** Finds something at a value and tells of every place where one of the comparisons made on the way would turn. */
export type Probe<T> = (at: Fraction, tell: ((turn: Turn) => void) | null) => T;

// Turns stand still where every comparison is of straight lines; some thousands are more than any formula has.
const MAX_INTERVALS = 50_000;

/** A single value, or all between two, on which the same is found. */
export interface Cell<T> {
  readonly from: Fraction;
  readonly to: Fraction;
  /** The value within that was looked at. */
  readonly probed: Fraction;
  readonly found: T;
}

/**
 * Divides a range into single values and open intervals on each of which the same is found, exactly and without
 * scanning: between the turns nearest to a probed value every comparison has the same sign, so the same course is
 * taken through the rules. What remains on either side is probed in turn.
 * @throws Error on a comparison whose turn moves with the value looked at: a defect of a rule.
 * @returns cells in order: the low end, an interval, a value, … the high end.
 */
export function divide<T>(low: Fraction, high: Fraction, probe: Probe<T>): Cell<T>[] {
  const single = (at: Fraction): Cell<T> => ({ from: at, to: at, probed: at, found: probe(at, null) });
  if (low.equals(high)) return [single(low)];
  const intervals: Cell<T>[] = [];
  const open: [Fraction, Fraction][] = [[low, high]];
  while (open.length > 0) {
    const [from, to] = open.pop()!;
    const middle = from.add(to).div(2);
    const turns = new NearestTurns(from, middle, to);
    const found = probe(middle, turn => turns.take(turn));
    if (turns.hit) {
      open.push([middle, to], [from, middle]);
      continue;
    }
    intervals.push({ from: turns.left, to: turns.right, probed: middle, found });
    if (intervals.length > MAX_INTERVALS) throw new Error('a comparison does not move in a straight line');
    if (turns.right.lt(to)) open.push([turns.right, to]);
    if (turns.left.gt(from)) open.push([from, turns.left]);
  }
  intervals.sort((a, b) => a.from.compare(b.from));
  return [single(low), ...intervals.flatMap(interval => [interval, single(interval.to)])];
}

/** The turns nearest to a value on either side, within an interval; exact where it matters. */
class NearestTurns {
  left: Fraction;
  right: Fraction;
  /** Whether something turns at the value itself. */
  hit = false;
  readonly #at: Fraction;
  #leftNear: number;
  #rightNear: number;

  constructor(from: Fraction, at: Fraction, to: Fraction) {
    [this.left, this.#at, this.right] = [from, at, to];
    [this.#leftNear, this.#rightNear] = [from.valueOf(), to.valueOf()];
  }

  take({ near, error, exact }: Turn): void {
    // Clear of the interval, and of the rounding of its own ends, in doubles.
    const slack = error + 1e-12 * (Math.abs(this.#leftNear) + Math.abs(this.#rightNear));
    if (near + slack < this.#leftNear || near - slack > this.#rightNear) return;
    const turn = exact();
    if (turn === null) return;
    const side = turn.compare(this.#at);
    if (side === 0) this.hit = true;
    else if (side < 0 && turn.gt(this.left)) [this.left, this.#leftNear] = [turn, turn.valueOf()];
    else if (side > 0 && turn.lt(this.right)) [this.right, this.#rightNear] = [turn, turn.valueOf()];
  }
}
