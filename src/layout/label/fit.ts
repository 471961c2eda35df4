import type { Millimetres } from '../../quantity/length.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import { type Outline, outlineOf } from '../die/outline.ts';
import { leastXHeight, type Stock } from '../stock.ts';
import { type BandPlan, bands, type Composition } from './bands.ts';
import { leastArea } from './least-area.ts';
import { type Measures, measuresAt, textSizes } from './measures.ts';
import { type PanelPlan, panels } from './panels.ts';
import type { Display, Making, Parts } from './parts.ts';
import { isPlain, penalty } from './penalty.ts';
import { roomOf } from './placing.ts';

/** A way to arrange the label. */
export type Plan =
  | { readonly kind: 'bands'; readonly band: BandPlan }
  | { readonly kind: 'panels'; readonly grid: PanelPlan };

export interface Fitted {
  readonly plan: Plan;
  readonly measures: Measures;
  readonly display: Display;
  readonly composition: Composition;
  /** Width left free at each side beyond the margin. */
  readonly aside: Millimetres;
}

/** What fits in the search for the size of text. */
const PLAIN: Display = { name: 5.4, reserve: 5.4, pictogram: 1, gap: 1, bars: 1 };

/** Where the least text is at stake, the name may take less, whatever its length. */
const COMPACT: Display = { ...PLAIN, name: 3, reserve: 3 };

/** Parts of the target size of bars that are tried. */
const BARS = [1, 0.9, 0.8] as const;

/** Distances of the bands from the edges of a die without straight sides, as parts of its height. */
const INSETS = [0.03, 0.08, 0.14] as const;

/**
 * Width that may be left free at each side, in millimetres: text that breaks well in a narrow die may break badly in
 * one a little wider, and a larger die must not have smaller text.
 */
const ASIDES = [0, 1.25, 2.5, 3.75] as const;

/** A die whose sides are straight for less than this part is laid out as a round one. */
const STRAIGHT = 0.6;

const isRound = ({ die }: Outline): boolean => {
  const short = Math.min(die.width, die.height);
  return die.shape === 'oval' || 2 * die.cornerRadius > (1 - STRAIGHT) * short;
};

/** All arrangements that are tried for a die. */
function plansFor(outline: Outline): readonly Plan[] {
  const { panels: folds = 1 } = outline.die;
  if (folds > 1) {
    return [1, 0].map(foot => ({ kind: 'panels', grid: { columns: folds, front: 1, foot } }));
  }
  const insets: (readonly [number, number])[] = isRound(outline)
    ? INSETS.flatMap(top => INSETS.map(bottom => [top, bottom] as const))
    : [[0, 0]];
  const plans: Plan[] = [];
  for (const inset of insets)
    for (const columns of [1, 2, 3, 4])
      for (const supplierFlows of [false, true])
        plans.push({ kind: 'bands', band: { columns, supplierFlows, inset } });
  for (let columns = 2; columns <= 6; columns += 1)
    for (let front = 1; front <= Math.ceil(columns / 2); front += 1)
      for (let foot = 0; foot <= Math.min(2, columns - front); foot += 1)
        plans.push({ kind: 'panels', grid: { columns, front, foot } });
  return plans;
}

/** What a search tries its arrangements on. */
interface Bench {
  readonly parts: Parts;
  readonly fonts: FontLibrary;
  readonly outline: Outline;
  readonly round: boolean;
}

const compose = (
  bench: Bench,
  plan: Plan,
  measures: Measures,
  display: Display,
  aside: Millimetres = 0,
): Composition | null => {
  const { parts, fonts, outline, round } = bench;
  const making: Making = { parts, fonts, measures, display, centred: round && plan.kind === 'bands' };
  const keep = { margin: measures.margin, safe: parts.profile.safeZone.value, aside };
  const room = roomOf(outline, keep, round);
  return plan.kind === 'bands' ? bands(making, room, plan.band) : panels(making, room, plan.grid);
};

const benchOf = (parts: Parts, stock: Stock, fonts: FontLibrary): Bench => {
  const outline = outlineOf(stock.die);
  return { parts, fonts, outline, round: isRound(outline) };
};

/** Whether the parts cover more than the die has inside the margin; a round one has less than its sides multiplied. */
const tooMuch = ({ parts, fonts, outline }: Bench, measures: Measures): boolean => {
  const { width, height, shape } = outline.die;
  const inside = (width - 2 * measures.margin) * (height - 2 * measures.margin);
  return leastArea(parts, measures, fonts) > inside * (shape === 'oval' ? Math.PI / 4 : 1);
};

/** Whether any arrangement fits at the least size. */
export function fitsAtAll(parts: Parts, stock: Stock, fonts: FontLibrary): boolean {
  const bench = benchOf(parts, stock, fonts);
  const measures = measuresAt(leastXHeight(stock), stock.profile, fonts);
  if (tooMuch(bench, measures)) return false;
  const bars = parts.barCode ? BARS.at(-1)! : 1;
  return plansFor(bench.outline).some(plan => compose(bench, plan, measures, { ...COMPACT, bars }) !== null);
}

/**
 * The arrangement at the largest size of text at which any fits; among those, the one that reads best. Null where
 * none fits at the least size.
 */
export function bestFit(parts: Parts, stock: Stock, fonts: FontLibrary): Fitted | null {
  const bench = benchOf(parts, stock, fonts);
  const plans = plansFor(bench.outline);
  const { preferred } = stock.profile.xHeight;
  for (const xHeight of [...textSizes(stock)].reverse()) {
    const measures = measuresAt(xHeight, stock.profile, fonts);
    if (tooMuch(bench, measures)) continue;
    const displays = xHeight < preferred ? [PLAIN, COMPACT] : [PLAIN];
    for (const display of displays) {
      // Below the preferred size, room counts for more than looks.
      const found = bestAt(bench, plans, measures, { display, anyhow: xHeight < preferred });
      if (found) return enlarged(bench, found);
    }
  }
  return null;
}

function bestAt(
  bench: Bench,
  plans: readonly Plan[],
  measures: Measures,
  { display, anyhow }: { readonly display: Display; readonly anyhow: boolean },
): Fitted | null {
  for (const aside of bench.round ? [0] : ASIDES) {
    const found = bestAside(bench, plans, measures, { display, anyhow, aside });
    if (found) return found;
  }
  return null;
}

function bestAside(
  bench: Bench,
  plans: readonly Plan[],
  measures: Measures,
  {
    display,
    anyhow,
    aside,
  }: { readonly display: Display; readonly anyhow: boolean; readonly aside: Millimetres },
): Fitted | null {
  let best: { readonly fitted: Fitted; readonly cost: number } | null = null;
  for (const plan of plans) {
    for (const part of bench.parts.barCode ? BARS : [1]) {
      const shown = { ...display, bars: part };
      const composition = compose(bench, plan, measures, shown, aside);
      if (!composition) continue;
      const fitted = { plan, measures, display: shown, composition, aside };
      if (!anyhow && !isPlain(fitted)) break;
      const cost = penalty(fitted, bench.outline.die);
      if (!best || cost < best.cost) best = { fitted, cost };
      break;
    }
  }
  return best?.fitted ?? null;
}

/** Enlargements that are tried where space is left over, most first: pictograms, then name, then distances. */
const PICTOGRAMS = [3, 2.6, 2.3, 2, 1.8, 1.6, 1.45, 1.3, 1.2, 1.1, 1];
const NAMES = [10, 8, 6.6, 5.4, 4.2, 3];
const GAPS = [2.6, 2.2, 1.9, 1.6, 1.4, 1.2, 1];

function enlarged(bench: Bench, fitted: Fitted): Fitted {
  let { display, composition } = fitted;
  const { plan, measures, aside } = fitted;
  const attempt = (change: Partial<Display>): boolean => {
    const wanted = { ...display, ...change };
    const found = compose(bench, plan, measures, wanted, aside);
    if (!found) return false;
    display = wanted;
    composition = found;
    return true;
  };
  attempt({ reserve: 0 });
  const { largestSide } = bench.parts.profile.pictogram;
  const most: Millimetres = (largestSide * Math.SQRT2) / measures.pictogram;
  NAMES.some(name => name >= display.name && attempt({ name }));
  PICTOGRAMS.some(pictogram => pictogram <= most && attempt({ pictogram }));
  GAPS.some(gap => attempt({ gap }));
  return { plan, measures, display, composition, aside };
}
