import type { Millimetres } from '../../quantity/length.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import { type Outline, outlineOf } from '../die/outline.ts';
import { leastXHeight, type Stock } from '../stock.ts';
import { bands, type Composition } from './bands.ts';
import { LAST_RESORT } from './bar-code-sizes.ts';
import { leastArea } from './least-area.ts';
import { type Measures, measuresAt, textSizes } from './measures.ts';
import { panels } from './panels.ts';
import type { Display, Making, Parts } from './parts.ts';
import { isPlain, penalty } from './penalty.ts';
import { roomOf } from './placing.ts';
import { isRound, type Plan, plansFor } from './plans.ts';
import { besideFixed } from './red-frames.ts';

export interface Fitted {
  readonly plan: Plan;
  readonly measures: Measures;
  readonly display: Display;
  readonly composition: Composition;
  /** Width left free at each side beyond the margin. */
  readonly aside: Millimetres;
}

/** What fits in the search for the size of text. */
const PLAIN: Display = { name: 4.1, reserve: 4.1, pictogram: 1, gap: 1, bars: 1, turn: false };

/** Where the least text is at stake, the name may take less, whatever its length. */
const COMPACT: Display = { ...PLAIN, name: 1.6, reserve: 1.6 };

/** A name of two lines; tried first among the looks at a size, never in the search for the size. */
const ROOMY: Display = { ...PLAIN, name: 5.4, reserve: 5.4 };

/** Parts of the target size of bars that are tried. */
const BARS = [1, 0.9, 0.8] as const;

/**
 * Width that may be left free at each side, in millimetres: text that breaks well in a narrow die may break badly in
 * one a little wider, and a larger die must not have smaller text.
 */
const ASIDES = [0, 1.25, 2.5, 3.75] as const;

/** What a search tries its arrangements on. */
interface Bench {
  readonly parts: Parts;
  readonly fonts: FontLibrary;
  readonly outline: Outline;
  readonly round: boolean;
  readonly stock: Stock;
  readonly words: 'black' | 'white';
  /** Parts of the target size of bars that are tried. */
  readonly bars: readonly number[];
  /** What the blocks were made from so far: arrangements with the same share them. */
  readonly makings: Map<Measures, Map<string, Making>>;
}

function makingOf(bench: Bench, measures: Measures, display: Display, centred: boolean): Making {
  const { parts, fonts, words, makings, stock } = bench;
  const key = JSON.stringify([display, centred]);
  const some = makings.get(measures) ?? new Map<string, Making>();
  makings.set(measures, some);
  const known = some.get(key);
  if (known) return known;
  const made: Making = { parts, fonts, measures, display, words, centred, ...logoOf(stock) };
  some.set(key, made);
  return made;
}

const compose = (
  bench: Bench,
  plan: Plan,
  measures: Measures,
  display: Display,
  aside: Millimetres = 0,
): Composition | null => {
  const { parts, outline, round } = bench;
  const making = makingOf(bench, measures, display, round && plan.kind === 'bands');
  const keep = { margin: measures.margin, safe: parts.profile.safeZone.value, aside };
  const room = besideFixed(roomOf(outline, keep, round), bench.stock, measures.gap);
  return plan.kind === 'bands' ? bands(making, room, plan.band) : panels(making, room, plan.grid);
};

/** The place that the record keeps for a logo. */
const logoOf = ({ logo }: Stock) =>
  logo?.width ? { logo: { width: logo.width, aspect: logo.art.aspect } } : {};

const benchOf = (parts: Parts, stock: Stock, fonts: FontLibrary): Bench => {
  const outline = outlineOf(stock.die);
  const words = stock.brand?.words ?? 'black';
  return { parts, fonts, outline, round: isRound(outline), stock, words, bars: BARS, makings: new Map() };
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
  const least: Bench = stock.profile.dpi === undefined ? bench : { ...bench, bars: [LAST_RESORT] };
  const display = loosest(least, COMPACT);
  return plansFor(bench.outline, stock).some(plan => compose(bench, plan, measures, display) !== null);
}

/**
 * The arrangement at the largest size of text at which any fits; among those, the one that reads best. Null where
 * none fits at the least size. Whether a size fits is asked of the loosest display, which every other one only
 * improves on.
 */
export function bestFit(parts: Parts, stock: Stock, fonts: FontLibrary): Fitted | null {
  const bench = benchOf(parts, stock, fonts);
  const sizes = textSizes(stock);
  const found = bestWith(bench, parts.barCode ? BARS : [1], sizes);
  // Letters grow smaller before the bars of a printer go below what a press may print.
  const last = !found && parts.barCode?.dpi !== undefined;
  return last ? bestWith(bench, [LAST_RESORT], sizes.slice(0, 1)) : found;
}

function bestWith(
  base: Omit<Bench, 'bars'>,
  bars: readonly number[],
  sizes: readonly Millimetres[],
): Fitted | null {
  const bench: Bench = { ...base, bars };
  const { parts, stock, fonts } = bench;
  const plans = plansFor(bench.outline, stock);
  const { preferred } = stock.profile.xHeight;
  const least = leastXHeight(stock);
  for (const xHeight of [...sizes].reverse()) {
    const measures = measuresAt(xHeight, stock.profile, fonts);
    if (tooMuch(bench, measures)) continue;
    // Below the preferred size, and at the least of all, room counts for more than looks.
    const anyhow = xHeight < preferred || xHeight <= least;
    const displays = anyhow ? [ROOMY, PLAIN, COMPACT] : [ROOMY, PLAIN];
    const ways = waysAt(bench, plans, measures, { display: loosest(bench, displays.at(-1)!), anyhow });
    if (ways.length === 0) continue;
    for (const turn of parts.barCode ? ([false, true] as const) : [false])
      for (const display of displays) {
        const found = bestOf(bench, ways, measures, { display: { ...display, turn }, anyhow });
        if (found) return enlarged(bench, found);
      }
  }
  return null;
}

/** Smallest bars, turned where that takes less. */
const loosest = ({ parts, bars }: Bench, display: Display): Display => ({
  ...display,
  bars: parts.barCode ? bars.at(-1)! : 1,
  turn: true,
});

/** An arrangement with the width left free at its sides. */
interface Way {
  readonly plan: Plan;
  readonly aside: Millimetres;
}

interface Wanted {
  readonly display: Display;
  /** Narrow columns are taken too. */
  readonly anyhow: boolean;
}

const fittedIn = (
  bench: Bench,
  { plan, aside }: Way,
  measures: Measures,
  { display, anyhow }: Wanted,
): Fitted | null => {
  const composition = compose(bench, plan, measures, display, aside);
  const fitted = composition && { plan, measures, display, composition, aside };
  return fitted && (anyhow || isPlain(fitted)) ? fitted : null;
};

/** The plans that fit at the least distance from the sides at which any does. */
function waysAt(bench: Bench, plans: readonly Plan[], measures: Measures, wanted: Wanted): readonly Way[] {
  for (const aside of bench.round ? [0] : ASIDES) {
    const ways = plans
      .map(plan => ({ plan, aside }))
      .filter(way => fittedIn(bench, way, measures, wanted) !== null);
    if (ways.length > 0) return ways;
  }
  return [];
}

/** The way that reads best. */
function bestOf(bench: Bench, ways: readonly Way[], measures: Measures, wanted: Wanted): Fitted | null {
  let best: { readonly fitted: Fitted; readonly cost: number } | null = null;
  for (const way of ways) {
    for (const bars of bench.bars) {
      const fitted = fittedIn(bench, way, measures, { ...wanted, display: { ...wanted.display, bars } });
      if (!fitted) continue;
      const cost = penalty(fitted, bench.outline.die);
      if (!best || cost < best.cost) best = { fitted, cost };
      break;
    }
  }
  return best?.fitted ?? null;
}

/** Enlargements that are tried where space is left over, most first: pictograms, then name, then distances. */
const PICTOGRAMS = [3, 2.6, 2.3, 2, 1.8, 1.6, 1.45, 1.3, 1.2, 1.1, 1];
const NAMES = [10, 8, 6.6, 5.4, 4.1, 3];
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
  if (plan.kind === 'panels') attempt({ beside: true });
  const { largestSide } = bench.parts.profile.pictogram;
  const grow = (side: Millimetres): void => {
    const most = (side * Math.SQRT2) / measures.pictogram;
    // The sides that are asked for exactly, else steps.
    const steps = bench.stock.wantedSide === side ? [most, ...PICTOGRAMS] : PICTOGRAMS;
    steps.some(pictogram => pictogram <= most && pictogram >= display.pictogram && attempt({ pictogram }));
  };
  if (bench.stock.wantedSide) grow(bench.stock.wantedSide);
  NAMES.some(name => name >= display.name && attempt({ name }));
  grow(largestSide);
  GAPS.some(gap => attempt({ gap }));
  return { plan, measures, display, composition, aside };
}
