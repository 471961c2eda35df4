import type Fraction from 'fraction.js';

/** What was found at one value, with the places where one of the comparisons made on the way would turn. */
export interface Probe<T> {
  readonly found: T;
  readonly turns: readonly Fraction[];
}

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
 * @returns cells in order: the low end, an interval, a value, … the high end.
 */
export function divide<T>(low: Fraction, high: Fraction, probe: (at: Fraction) => Probe<T>): Cell<T>[] {
  const single = (at: Fraction): Cell<T> => ({ from: at, to: at, probed: at, found: probe(at).found });
  if (low.equals(high)) return [single(low)];
  const intervals: Cell<T>[] = [];
  const open: [Fraction, Fraction][] = [[low, high]];
  while (open.length > 0) {
    const [from, to] = open.pop()!;
    const middle = from.add(to).div(2);
    const { found, turns } = probe(middle);
    let left = from;
    let right = to;
    let onTurn = false;
    for (const turn of turns) {
      const side = turn.compare(middle);
      if (side === 0) onTurn = true;
      else if (side < 0 && turn.gt(left)) left = turn;
      else if (side > 0 && turn.lt(right)) right = turn;
    }
    if (onTurn) {
      open.push([middle, to], [from, middle]);
      continue;
    }
    intervals.push({ from: left, to: right, probed: middle, found });
    if (right.lt(to)) open.push([right, to]);
    if (left.gt(from)) open.push([from, left]);
  }
  intervals.sort((a, b) => a.from.compare(b.from));
  return [single(low), ...intervals.flatMap(interval => [interval, single(interval.to)])];
}
