import data from '../../../hazard-data/us-hcs/sheet/prescribed-ranges.json' with { type: 'json' };
import type { Exact } from '../../quantity/exact.ts';
import { figure, fill } from './fill.ts';

export interface PercentRange {
  readonly low: number;
  readonly high: number;
}

const width = ({ low, high }: PercentRange): number => high - low;
const holds = (outer: PercentRange, inner: PercentRange): boolean =>
  outer.low <= inner.low && inner.high <= outer.high;
const apart = (one: PercentRange, other: PercentRange): boolean =>
  one.high < other.low || one.low > other.high;

/**
 * The prescribed range for a concentration that is withheld as a trade secret: the narrowest that holds it, else
 * two consecutive ranges joined (29 CFR 1910.1200(i)(1)(iv)-(v)). Null where the law has none, as below 0.1 %.
 * @param exact percent; both ends equal for a single concentration
 */
export function prescribedRange(exact: PercentRange): PercentRange | null {
  const single = narrowest(data.ranges.filter(range => holds(range, exact)));
  if (single) return single;
  if (exact.low < data.combinableFrom || exact.high > data.combinableTo) return null;
  const combinable = data.ranges.filter(({ high }) => high <= data.combinableTo);
  const pairs = combinable.slice(1).flatMap((next, at) => {
    const previous = combinable[at]!;
    const joined = { low: previous.low, high: next.high };
    return !apart(previous, exact) && !apart(next, exact) && holds(joined, exact) ? [joined] : [];
  });
  return narrowest(pairs);
}

const narrowest = (ranges: readonly PercentRange[]): PercentRange | null =>
  ranges.reduce<PercentRange | null>(
    (best, { low, high }) => (best && width(best) <= high - low ? best : { low, high }),
    null,
  );

/**
 * Percent of the formula to three significant figures: `4`, `1 to 2`.
 * @param to the phrase for a range
 */
export function percentText(low: Exact, high: Exact, to = '{low} to {high}', decimalMark = '.'): string {
  const [from, upTo] = [low, high].map(({ value }) => figure(value, 3, decimalMark));
  return from === upTo ? from! : fill(to, { low: from!, high: upTo! });
}
