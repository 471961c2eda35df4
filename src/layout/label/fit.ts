import { type Millimetres, toMillimetres } from '../../quantity/length.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import type { Stock } from '../stock.ts';
import { bands } from './bands.ts';
import type { Box } from './box.ts';
import { type Measures, measuresAt } from './measures.ts';
import { type Grid, panels } from './panels.ts';
import type { Arrangement, Parts } from './parts.ts';
import { TooNarrow } from './text-block.ts';

/** A way to arrange the label. */
export interface Plan {
  readonly name: string;
  readonly arrange: (arrangement: Arrangement) => Box | null;
  /** Number of equal columns over the width. */
  readonly columns: number;
  /** No paragraph is split between columns. */
  readonly whole: boolean;
}

export interface Fitted {
  readonly plan: Plan;
  readonly measures: Measures;
  /** Inside the margins. */
  readonly box: Box;
}

const STEPS = 9;

const bandPlan = (columns: number, whole: boolean): Plan => ({
  name: `bands-${columns}${whole ? '' : '-split'}`,
  columns,
  whole,
  arrange: arrangement => bands(arrangement, columns),
});

const panelPlan = (grid: Grid, whole: boolean): Plan => ({
  name: `panels-${grid.columns}-${grid.front}-${grid.foot}${whole ? '' : '-split'}`,
  columns: grid.columns,
  whole,
  arrange: arrangement => panels(arrangement, grid),
});

/** Under one text column the foot follows its text; under two, text would go on beside it. */
function* grids(mostFoot: number): Generator<Grid> {
  for (let columns = 2; columns <= 6; columns += 1) {
    for (let front = 1; front <= Math.ceil(columns / 2); front += 1) {
      for (let foot = 0; foot <= Math.min(mostFoot, columns - front); foot += 1)
        yield { columns, front, foot };
    }
  }
}

/** All arrangements that are tried. */
export const PLANS: readonly Plan[] = [true, false].flatMap(whole => [
  ...[1, 2, 3, 4].map(columns => bandPlan(columns, whole)),
  ...[...grids(whole ? 1 : 2)].map(grid => panelPlan(grid, whole)),
]);

/** The arrangement at a scale, or null where it does not fit the die. */
export function arrangeAt(
  plan: Plan,
  scale: number,
  parts: Parts,
  stock: Stock,
  fonts: FontLibrary,
  display = 1,
): Fitted | null {
  const measures = measuresAt(scale, stock, fonts, display);
  const width = stock.die.width - 2 * measures.margin;
  const height = stock.die.height - 2 * measures.margin;
  if (width <= 0 || height <= 0) return null;
  try {
    const box = plan.arrange({ parts, measures, fonts, width, height, whole: plan.whole });
    return box && { plan, measures, box };
  } catch (error) {
    if (error instanceof TooNarrow) return null;
    throw error;
  }
}

/** Whether any arrangement fits at the smallest scale. */
export const fitsAtAll = (parts: Parts, stock: Stock, fonts: FontLibrary): boolean =>
  PLANS.some(plan => arrangeAt(plan, 0, parts, stock, fonts) !== null);

/**
 * The arrangement that reads best: the largest scale that fits, less what an uncomfortable measure or shape costs.
 * Null where none fits at the smallest scale.
 */
export function bestFit(parts: Parts, stock: Stock, fonts: FontLibrary): Fitted | null {
  let best: { readonly fitted: Fitted; readonly score: number } | null = null;
  for (const plan of PLANS) {
    // A plan that cannot beat the best so far is not worth the search.
    const least = best ? Math.max(0, best.score + (plan.whole ? 0 : SPLIT)) : 0;
    if (least > 1 || !arrangeAt(plan, Math.min(1, least), parts, stock, fonts)) continue;
    const fitted = largest(plan, Math.min(1, least), parts, stock, fonts);
    if (!fitted) continue;
    const score = fitted.measures.scale - penalty(fitted, stock);
    if (!best || score > best.score) best = { fitted, score };
  }
  return best && enlarged(best.fitted, parts, stock, fonts);
}

/** Enlargements of name, signal word and pictograms that are tried where space is left over. */
const DISPLAYS = [2, 1.8, 1.65, 1.5, 1.4, 1.3, 1.2, 1.1];

function enlarged(fitted: Fitted, parts: Parts, stock: Stock, fonts: FontLibrary): Fitted {
  for (const display of DISPLAYS) {
    const larger = arrangeAt(fitted.plan, fitted.measures.scale, parts, stock, fonts, display);
    if (larger) return larger;
  }
  return fitted;
}

function largest(plan: Plan, from: number, parts: Parts, stock: Stock, fonts: FontLibrary): Fitted | null {
  const whole = arrangeAt(plan, 1, parts, stock, fonts);
  if (whole) return whole;
  let found = arrangeAt(plan, from, parts, stock, fonts);
  let low = from;
  let high = 1;
  for (let step = 0; step < STEPS; step += 1) {
    const middle = (low + high) / 2;
    const fitted = arrangeAt(plan, middle, parts, stock, fonts);
    if (fitted) {
      found = fitted;
      low = middle;
    } else high = middle;
  }
  return found;
}

/** Mean width of a character in times the size, of running English text in a condensed face. */
const MEAN_CHARACTER = 0.42;
const COMFORTABLE = { least: 32, most: 80 };

/** What paragraphs split between columns cost, and type below the preferred size. */
const SPLIT = 0.3;
const SMALL = 0.1;

/** Lines of some 32 to 80 characters read well; bands suit upright labels, panels wide ones. */
function penalty({ plan, measures }: Fitted, { die, profile }: Stock): number {
  const column: Millimetres = (die.width - 2 * measures.margin) / plan.columns;
  const characters = column / (MEAN_CHARACTER * toMillimetres(measures.size));
  const short = Math.max(0, COMFORTABLE.least - characters) * 0.012;
  const long = Math.max(0, characters - COMFORTABLE.most) * 0.006;
  const small = measures.xHeight < profile.xHeight.preferred ? SMALL : 0;
  const wide = die.width / die.height;
  const shape = plan.name.startsWith('bands') ? Math.max(0, wide - 1.7) * 0.1 : Math.max(0, 1.5 - wide) * 0.4;
  return short + long + shape + (plan.whole ? 0 : SPLIT) + small;
}
