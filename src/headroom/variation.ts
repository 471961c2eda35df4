import Fraction from 'fraction.js';
import type { Composition, Constituent, Formula } from '../formula/constituent.ts';
import { Exact } from '../quantity/exact.ts';
import { type Diagnostic, fail, type Outcome, succeed } from '../report/diagnostic.ts';
import { type Affine, valueAt } from './affine.ts';

/** What gives way when one constituent takes more: the water alone, or all others in proportion. */
export type Others = 'water' | 'scaled';

/** A mixture at one percent of the varied constituent, with the line that each of its amounts moves on. */
export interface Sample {
  readonly formula: Formula;
  readonly lines: ReadonlyMap<Exact, Affine>;
}

/** A formula with one thing free to vary. */
export interface Varied {
  readonly constituent: Constituent;
  readonly others: Others;
  /** Least and greatest percent that the constituent can take. */
  readonly domain: readonly [Fraction, Fraction];
  /** The formula with x percent of the constituent; what has come to nothing is left out. */
  at(x: Fraction): Sample;
}

/** A formula with one constituent free to vary. */
export interface Variation extends Varied {
  /** The line of every constituent, at each composition by itself. */
  readonly paths: readonly (readonly Affine[])[];
}

const none = new Fraction(0);
const one = new Fraction(1);
const hundred = new Fraction(100);
const line = (start: Fraction, slope: Fraction): Affine => ({
  start: Exact.fraction(start),
  slope: Exact.fraction(slope),
});

/**
 * Lets one constituent of a formula vary; a finding where nothing can give way for it.
 * @param compositions at which the formula is judged where its percents are ranges.
 */
export function vary(
  formula: Formula,
  compositions: readonly Composition[],
  index: number,
  others: Others,
): Outcome<Variation> {
  const constituent = formula.constituents[index]!;
  const corners = compositions.map(corner => corner.map(({ exact }) => exact));
  const water = formula.constituents.findIndex(each => each.water);
  if (others === 'water' && water < 0)
    return refuse('no-water', 'the formula holds no water that could give way', 'use `--others scaled`');
  if (others === 'water' && water === index)
    return refuse(
      'water-for-water',
      `${constituent.name} cannot give way for itself`,
      'use `--others scaled`',
    );
  const rests = corners.map(corner => sum(corner).sub(corner[index]!));
  if (others === 'scaled' && rests.some(rest => rest.lte(0)))
    return refuse(
      'single-constituent',
      `${constituent.name} is all there is: nothing else could give way`,
      'the class of a single substance does not change with its amount',
    );

  const lines = corners.map((corner, c) =>
    corner.map((percent, i): Affine => {
      if (i === index) return line(none, one);
      if (others === 'water')
        return i === water ? line(percent.add(corner[index]!), one.neg()) : line(percent, none);
      const share = percent.div(rests[c]!);
      return line(share.mul(rests[c]!.add(corner[index]!)), share.neg());
    }),
  );
  const ends = corners.map((corner, c) =>
    others === 'water' ? corner[water]!.add(corner[index]!) : rests[c]!.add(corner[index]!),
  );
  const end = ends.reduce((least, each) => (each.lt(least) ? each : least), hundred);
  const paths = distinctPaths(lines, index);
  return succeed({
    constituent,
    others,
    domain: [none, end],
    paths: lines,
    at: x => sampleAt(formula.constituents, paths, x),
  });
}

/** Corners that differ in the varied constituent alone are one; `index` null where all are to differ in something. */
export function distinctPaths(
  corners: readonly (readonly Affine[])[],
  index: number | null,
): readonly (readonly Affine[])[] {
  const seen = new Set<string>();
  return corners.filter(corner => {
    const key = corner
      .map(({ start, slope }, i) =>
        i === index ? '' : `${start.exact.toFraction()},${slope.exact.toFraction()}`,
      )
      .join(' ');
    return !seen.has(key) && seen.add(key);
  });
}

/** The mixture at x percent, from the lines of its constituents at each composition. */
export function sampleAt(
  constituents: readonly Constituent[],
  corners: readonly (readonly Affine[])[],
  x: Fraction,
): Sample {
  const lines = new Map<Exact, Affine>();
  const percents = corners.map(corner =>
    corner.map(path => {
      if (path.slope.value === 0) return path.start;
      const percent = Exact.fraction(valueAt(path, x));
      lines.set(percent, path);
      return percent;
    }),
  );
  const column = (i: number) => percents.map(corner => corner[i]!);
  const highest = (i: number) => column(i).reduce((most, each) => (each.exact.gt(most.exact) ? each : most));
  const lowest = (i: number) =>
    column(i).reduce((least, each) => (each.exact.lt(least.exact) ? each : least));
  const present = constituents.map((_, i) => i).filter(i => highest(i).exact.gt(0));
  return {
    lines,
    formula: {
      constituents: present.map(i => ({ ...constituents[i]!, low: lowest(i), high: highest(i) })),
      ranged: percents.length > 1,
      chosen: percents.map(corner => present.map(i => corner[i]!)),
      most: () => present.map(i => highest(i)),
    },
  };
}

const sum = (percents: readonly Fraction[]): Fraction =>
  percents.reduce((total, percent) => total.add(percent), none);

const refuse = (code: string, message: string, hint: string): Outcome<never> => {
  const finding: Diagnostic = { code, severity: 'error', message, hint };
  return fail(finding);
};
