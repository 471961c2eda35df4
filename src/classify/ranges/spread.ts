import Fraction from 'fraction.js';
import type { Composition, Formula } from '../../formula/constituent.ts';
import { Exact } from '../../quantity/exact.ts';
import type { Context } from '../context.ts';
import type { Objective } from './objective.ts';

/** The compositions of a formula at which a rule is to be judged. One, where it has no ranges. */
export interface Spread {
  /** Every constituent at its worse end by itself: for rules that look at one ingredient at a time. */
  readonly each: readonly Context[];
  /** Whether sums need compositions of their own, because those of `each` do not sum to 100 %. */
  readonly apart: boolean;
  /** Compositions of 100 % that are worst for sums, one for each objective. */
  at(objectivesOf: (context: Context) => readonly Objective[]): readonly Context[];
}

type ContextAt = (percents: Composition) => Context;

/**
 * The worse ends of the ranges, found from the rules themselves: a sum is linear in the shares that fill 100 %, so the
 * composition that is worst for it follows from its weights. Grows in a line with the number of ranges.
 */
export function worstEnds(
  formula: Formula,
  contextAt: ContextAt,
  highs: Composition = formula.constituents.map(({ high }) => high),
): Spread {
  const { chosen, ranged } = formula;
  if (chosen) {
    const all = chosen.map(contextAt);
    return { each: all, apart: false, at: () => all };
  }
  if (!ranged) {
    const one = [contextAt(highs)];
    return { each: one, apart: false, at: () => one };
  }
  return spreadOf(formula, contextAt(highs), contextAt, ({ weights }) => weights);
}

/** The milder ends, to tell what a range spans. */
export const mildEnds = (formula: Formula, contextAt: ContextAt): Spread =>
  spreadOf(formula, contextAt(formula.constituents.map(({ low }) => low)), contextAt, ({ weights }) =>
    weights.map(weight => -weight),
  );

function spreadOf(
  formula: Formula,
  each: Context,
  contextAt: ContextAt,
  weightsOf: (objective: Objective) => readonly number[],
): Spread {
  const made = new Map<string, Context>();
  const contextOf = (percents: Composition): Context => {
    const key = percents.map(({ value }) => value).join();
    const known = made.get(key);
    if (known) return known;
    const context = contextAt(percents);
    made.set(key, context);
    return context;
  };
  return {
    each: [each],
    apart: true,
    at: objectivesOf => {
      const found = objectivesOf(each);
      const wanted = found.length > 0 ? found : [{ weights: formula.constituents.map(() => 0) }];
      const contexts = wanted.flatMap(objective => {
        const best = formula.most(weightsOf(objective));
        const capped = underCaps(formula, best, objective);
        return capped === best ? [contextOf(best)] : [contextOf(best), contextOf(capped)];
      });
      return [...new Set(contexts)];
    },
  };
}

// A capped constituent is held this far below its cap, in percent, or half its room where that is less.
const STEP = new Fraction(1, 100);

/** Moves a composition towards the least of each constituent that passes its cap; all between two compositions is one too. */
function underCaps(formula: Formula, start: Composition, { caps = [] }: Objective): Composition {
  let at = start;
  for (const { constituent, below } of caps) {
    const now = at[constituent]!.exact;
    const low = formula.constituents[constituent]!.low.exact;
    if (now.lt(below.exact) || low.gte(below.exact)) continue;
    const room = below.exact.sub(low).div(2);
    const target = below.exact.sub(room.lt(STEP) ? room : STEP);
    const least = formula.most(formula.constituents.map((_, i) => (i === constituent ? -1 : 0)));
    const from = least[constituent]!.exact;
    if (now.equals(from)) continue;
    const part = now.sub(target).div(now.sub(from));
    at = at.map((percent, i) =>
      Exact.fraction(percent.exact.add(least[i]!.exact.sub(percent.exact).mul(part))),
    );
  }
  return at;
}
