import Fraction from 'fraction.js';
import { keyOf, type Plan, type PlannedLine } from './_plan.ts';

const hundred = new Fraction(100);
const zero = new Fraction(0);

/** Percents of constituents by key, with the weighted sum of 100 % of them. */
interface Filled {
  readonly percents: ReadonlyMap<string, Fraction>;
  readonly value: number;
}

interface Valued {
  readonly planned: PlannedLine;
  readonly inner: Filled | null;
  /** Weighted sum of one percent of the line. */
  readonly value: number;
}

/**
 * The composition of a plan that sums to 100 % and whose weighted sum is greatest. The sum is linear in the shares of
 * each list, so the best filling takes every line at its low end and gives what is left of 100 % to the lines that
 * weigh most. A raw material is filled by itself first: what is best in it does not depend on how much of it is taken.
 * @param weightOf weight of one percent of a constituent, by key.
 */
export function mostOf(plan: Plan, weightOf: (key: string) => number): ReadonlyMap<string, Fraction> {
  const known = new Map<Plan, Filled>();
  const fill = (of: Plan): Filled => {
    const before = known.get(of);
    if (before) return before;
    const lines = of.lines.map((planned): Valued => {
      const { line } = planned;
      if (line.kind === 'substance') return { planned, inner: null, value: weightOf(keyOf(line)) };
      const inner = planned.inner ? fill(planned.inner) : null;
      return { planned, inner, value: inner ? inner.value / 100 : 0 };
    });
    const made = joined(lines, taken(lines));
    known.set(of, made);
    return made;
  };
  return fill(plan).percents;
}

const lowOf = ({ share }: PlannedLine): Fraction =>
  share.kind === 'fixed' ? share.percent : share.kind === 'range' ? share.low : zero;

/** Percent of each line: low ends first, the rest of 100 % to what weighs most. */
function taken(lines: readonly Valued[]): Fraction[] {
  const percents = lines.map(({ planned }) => lowOf(planned));
  let left = percents.reduce((rest, percent) => rest.sub(percent), hundred);
  const rest = lines.filter(({ planned }) => planned.share.kind === 'rest');
  const restValue = rest.reduce(
    (sum, { planned, value }) =>
      planned.share.kind === 'rest' ? sum + planned.share.part.valueOf() * value : sum,
    0,
  );
  const ranged = lines.flatMap(({ planned, value }, i) =>
    planned.share.kind === 'range' && (rest.length === 0 || value > restValue)
      ? [{ i, value, room: planned.share.high.sub(planned.share.low) }]
      : [],
  );
  ranged.sort((a, b) => b.value - a.value);
  for (const { i, room } of ranged) {
    if (left.lte(0)) break;
    const more = room.lt(left) ? room : left;
    percents[i] = percents[i]!.add(more);
    left = left.sub(more);
  }
  if (rest.length > 0 && left.gt(0))
    lines.forEach(({ planned: { share } }, i) => {
      if (share.kind === 'rest') percents[i] = left.mul(share.part);
    });
  return percents;
}

function joined(lines: readonly Valued[], percents: readonly Fraction[]): Filled {
  const found = new Map<string, Fraction>();
  let value = 0;
  const add = (key: string, more: Fraction) => {
    const before = found.get(key);
    found.set(key, before ? before.add(more) : more);
  };
  lines.forEach(({ planned: { line }, inner, value: each }, i) => {
    const percent = percents[i]!;
    value += each * percent.valueOf();
    if (line.kind === 'substance') add(keyOf(line), percent);
    else if (inner) {
      const part = percent.div(hundred);
      for (const [key, within] of inner.percents) add(key, within.mul(part));
    }
  });
  return { percents: found, value };
}
