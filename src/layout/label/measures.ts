import { type Millimetres, type Points, toMillimetres, toPoints } from '../../quantity/length.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import { leastXHeight, type PressProfile, type Stock } from '../stock.ts';

/** All sizes of a label at one size of running text; they grow together. */
export interface Measures {
  /** Height of the lower-case x of running text. */
  readonly xHeight: Millimetres;
  readonly size: Points;
  /** The same in millimetres. */
  readonly em: Millimetres;
  /** Pictograms between opposite corners: the least at this size of text. */
  readonly pictogram: Millimetres;
  /** Between sections. */
  readonly gap: Millimetres;
  /** Between paragraphs. */
  readonly paragraphGap: Millimetres;
  readonly gutter: Millimetres;
  /** From the die to the nearest item. */
  readonly margin: Millimetres;
  /** From the upper edge of the die to the first block. */
  readonly top: Millimetres;
  readonly lotWindow: { readonly width: Millimetres; readonly height: Millimetres };
  readonly thin: Millimetres;
  readonly heavy: Millimetres;
}

/** Ratio of neighbouring sizes of running text. */
const STEP = 1.05;

/**
 * The sizes of running text that are tried, in x-heights, least first. They are steps, so that the size depends on
 * whether the text fits and on nothing else, and a larger die never has smaller text.
 */
export function textSizes(stock: Stock): readonly Millimetres[] {
  const { die, profile } = stock;
  const { xHeight } = profile;
  const least = leastXHeight(stock);
  const largest = Math.max(
    least,
    Math.min(
      xHeight.largest,
      Math.max(xHeight.preferred, xHeight.largestPart * Math.sqrt(die.width * die.height)),
    ),
  );
  const sizes: number[] = [];
  for (let size = least; size <= largest + 1e-9; size *= STEP) sizes.push(size);
  return sizes;
}

/** Millimetres between opposite corners of a square of a side. */
export const diagonal = (side: Millimetres): Millimetres => side * Math.SQRT2;

/** Height of a line of the least text with its descenders and a gap, in x-heights: room for a notice above the first block. */
const NOTICE = 2.5;

/** How far the tallest letters of a name rise above its capitals at the largest size, in times the size of running text. */
const RISE = 0.2;

/** How pictograms grow with the text: times the x-height, between opposite corners. */
const PICTOGRAM = 13.5;

/**
 * Distances in x-heights at the least size and from the preferred one on: on a small die room counts for more than
 * looks. Judgement, no source.
 */
const MARGIN = [0.95, 1.1] as const;
const GAP = [0.65, 1.35] as const;
const GUTTER = [2, 2.6] as const;

/** Sizes at an x-height of running text. */
export function measuresAt(xHeight: Millimetres, profile: PressProfile, fonts: FontLibrary): Measures {
  const { safeZone, lotWindow, rule, pictogram } = profile;
  const size = toPoints((xHeight * 1000) / fonts.metrics('regular').xHeight);
  const { minimum, largest } = lotWindow;
  const share = Math.min(1, Math.max(0, xHeight / profile.xHeight.minimum - 1));
  const { minimum: least, preferred } = profile.xHeight;
  const ease = preferred > least ? Math.min(1, Math.max(0, (xHeight - least) / (preferred - least))) : 1;
  const between = (tight: number, easy: number): Millimetres => (tight + (easy - tight) * ease) * xHeight;
  const margin = safeZone.value + between(...MARGIN);
  return {
    xHeight,
    size,
    em: toMillimetres(size),
    pictogram: Math.max(diagonal(pictogram.minimumSide), PICTOGRAM * xHeight),
    gap: between(...GAP),
    paragraphGap: 0.5 * xHeight,
    gutter: between(...GUTTER),
    margin,
    top: Math.max(margin, safeZone.value + NOTICE * least + RISE * toMillimetres(size)),
    lotWindow: {
      width: minimum.width + (largest.width - minimum.width) * share,
      height: minimum.height + (largest.height - minimum.height) * share,
    },
    thin: rule.thin,
    heavy: rule.heavy,
  };
}
