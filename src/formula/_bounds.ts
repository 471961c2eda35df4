import Fraction from 'fraction.js';
import { mostOf } from './_most.ts';
import { keyOf, type Plan, type PlannedLine } from './_plan.ts';

/** Least and greatest percent. */
export type Bounds = readonly [low: Fraction, high: Fraction];

const hundred = new Fraction(100);
const zero = new Fraction(0);
const atLeast = (a: Fraction, b: Fraction): Fraction => (a.lt(b) ? b : a);
const atMost = (a: Fraction, b: Fraction): Fraction => (a.gt(b) ? b : a);

/** The least and greatest percent that every constituent can have in a mixture that sums to 100 %, by key. */
export function boundsOf(plan: Plan): ReadonlyMap<string, Bounds> {
  const known = new Map<Plan, ReadonlyMap<string, Bounds>>();
  const bounds = (of: Plan): ReadonlyMap<string, Bounds> => {
    const before = known.get(of);
    if (before) return before;
    const lines = lineBounds(of);
    const found = new Map<string, Bounds>();
    const again = new Set<string>();
    const add = (key: string, [low, high]: Bounds) => {
      const first = found.get(key);
      if (first) again.add(key);
      found.set(key, first ? [first[0].add(low), first[1].add(high)] : [low, high]);
    };
    of.lines.forEach(({ line, inner }, i) => {
      const [low, high] = lines[i]!;
      if (line.kind === 'substance') add(keyOf(line), [low, high]);
      else if (inner)
        for (const [key, [least, most]] of bounds(inner))
          add(key, [least.mul(low).div(hundred), most.mul(high).div(hundred)]);
    });
    // Lines that share a constituent share the room that the sum leaves.
    for (const key of again) {
      const [low, high] = found.get(key)!;
      if (!low.equals(high)) found.set(key, [endOf(of, key, -1), endOf(of, key, 1)]);
    }
    known.set(of, found);
    return found;
  };
  return bounds(plan);
}

const endOf = (plan: Plan, key: string, weight: 1 | -1): Fraction =>
  mostOf(plan, other => (other === key ? weight : 0)).get(key)!;

/** What each line can have beside the others. */
function lineBounds({ lines }: Plan): readonly Bounds[] {
  const stated = ({ share }: PlannedLine): Bounds =>
    share.kind === 'fixed'
      ? [share.percent, share.percent]
      : share.kind === 'range'
        ? [share.low, share.high]
        : [zero, zero];
  const all = lines.map(stated);
  const lows = all.reduce((sum, [low]) => sum.add(low), zero);
  const highs = all.reduce((sum, [, high]) => sum.add(high), zero);
  const hasRest = lines.some(({ share }) => share.kind === 'rest');
  return lines.map(({ share }, i): Bounds => {
    const [low, high] = all[i]!;
    if (share.kind === 'rest')
      return [
        atLeast(hundred.sub(highs), zero).mul(share.part),
        atLeast(hundred.sub(lows), zero).mul(share.part),
      ];
    if (share.kind === 'fixed') return [low, high];
    const most = atLeast(atMost(high, hundred.sub(lows.sub(low))), low);
    const least = hasRest ? low : atMost(atLeast(low, hundred.sub(highs.sub(high))), high);
    return [least, most];
  });
}
