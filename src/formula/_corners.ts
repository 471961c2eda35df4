import Fraction from 'fraction.js';
import { keyOf, type Plan, type PlannedLine, type Range } from './_plan.ts';

/** All combinations are computed up to this many ranges: 1,024 corners. */
export const MAX_FULL_RANGES = 10;

/** Which ranges are at their high end. */
export type Corner = readonly boolean[];

const hundred = new Fraction(100);
const zero = new Fraction(0);

/**
 * Corners of the ranges: all combinations of low and high up to ten ranges; above that all low, all high and,
 * for each range, it alone at the other end.
 */
export function cornersOf(ranges: readonly Range[]): readonly Corner[] {
  const count = ranges.length;
  if (count <= MAX_FULL_RANGES)
    return Array.from({ length: 2 ** count }, (_, bits) =>
      ranges.map((_range, index) => ((bits >> index) & 1) === 1),
    );
  const all = (end: boolean) => ranges.map(() => end);
  const alone = (end: boolean) =>
    ranges.map((_, chosen) => ranges.map((_range, index) => (index === chosen) === end));
  return [all(false), all(true), ...alone(true), ...alone(false)];
}

/** Percent of every constituent, by key, at a corner. */
export function percentsAt(plan: Plan, corner: Corner): ReadonlyMap<string, Fraction> {
  const known = new Map<Plan, ReadonlyMap<string, Fraction>>();
  const percents = (of: Plan): ReadonlyMap<string, Fraction> => {
    const before = known.get(of);
    if (before) return before;
    const stated = (line: PlannedLine): Fraction => {
      const { share } = line;
      if (share.kind === 'fixed') return share.percent;
      if (share.kind === 'range') return corner[line.range!] ? share.high : share.low;
      return zero;
    };
    const rest = atLeastZero(of.lines.reduce((left, line) => left.sub(stated(line)), hundred));
    const found = new Map<string, Fraction>();
    for (const planned of of.lines) {
      const percent = planned.share.kind === 'rest' ? rest.mul(planned.share.part) : stated(planned);
      addLine(found, planned, percent, inner => percents(inner));
    }
    known.set(of, found);
    return found;
  };
  return percents(plan);
}

function addLine(
  found: Map<string, Fraction>,
  { line, inner }: PlannedLine,
  percent: Fraction,
  percents: (inner: Plan) => ReadonlyMap<string, Fraction>,
): void {
  const add = (key: string, more: Fraction) => {
    const before = found.get(key);
    found.set(key, before ? before.add(more) : more);
  };
  if (line.kind === 'substance') add(keyOf(line), percent);
  else if (inner) {
    const part = percent.div(hundred);
    for (const [key, within] of percents(inner)) add(key, within.mul(part));
  }
}

/** The least (or greatest) percent that every constituent can have, each by itself: used where not all corners are computed. */
export function boundsOf(plan: Plan, end: 'low' | 'high'): ReadonlyMap<string, Fraction> {
  const known = new Map<Plan, ReadonlyMap<string, Fraction>>();
  const bounds = (of: Plan): ReadonlyMap<string, Fraction> => {
    const before = known.get(of);
    if (before) return before;
    const at = ({ share }: PlannedLine, which: 'low' | 'high'): Fraction =>
      share.kind === 'fixed' ? share.percent : share.kind === 'range' ? share[which] : zero;
    const other = end === 'low' ? 'high' : 'low';
    const rest = atLeastZero(of.lines.reduce((left, line) => left.sub(at(line, other)), hundred));
    const found = new Map<string, Fraction>();
    for (const planned of of.lines)
      addLine(
        found,
        planned,
        planned.share.kind === 'rest' ? rest.mul(planned.share.part) : at(planned, end),
        inner => bounds(inner),
      );
    known.set(of, found);
    return found;
  };
  return bounds(plan);
}

const atLeastZero = (fraction: Fraction): Fraction => (fraction.lt(0) ? zero : fraction);
