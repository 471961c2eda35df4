import { type Millimetres, type Points, toPoints } from '../../quantity/length.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import type { Stock } from '../stock.ts';

/** All sizes of a label at one scale; they grow together. */
export interface Measures {
  /** 0 is the least that the press profile allows, 1 the largest that looks right. */
  readonly scale: number;
  /** Height of the lower-case x of running text. */
  readonly xHeight: Millimetres;
  readonly size: Points;
  readonly pictogram: Millimetres;
  /** Between sections. */
  readonly gap: Millimetres;
  /** Between paragraphs. */
  readonly paragraphGap: Millimetres;
  readonly gutter: Millimetres;
  /** From the die to the nearest item. */
  readonly margin: Millimetres;
  readonly lotWindow: { readonly width: Millimetres; readonly height: Millimetres };
  /** Further enlargement of what is read from afar: name, signal word, pictograms; 1 or more. */
  readonly display: number;
  /** The product name is at most so many times as large as running text. */
  readonly nameFactor: number;
  readonly thin: Millimetres;
  readonly heavy: Millimetres;
}

const between = (from: number, to: number, scale: number): number => from + (to - from) * scale;

/**
 * Sizes at a scale from 0 to 1.
 * @param display further enlargement of name, signal word and pictograms
 */
export function measuresAt(
  scale: number,
  { die, profile }: Stock,
  fonts: FontLibrary,
  display = 1,
): Measures {
  const { xHeight: sizes, pictogram, safeZone, lotWindow, rule } = profile;
  const xHeight = between(sizes.minimum, sizes.largest, scale);
  const size = toPoints((xHeight * 1000) / fonts.metrics('regular').xHeight);
  const airy = Math.max(safeZone.value, 0.04 * Math.min(die.width, die.height));
  return {
    scale,
    xHeight,
    size,
    pictogram: between(pictogram.minimum, pictogram.largest, scale) * display,
    display,
    gap: between(1.1, 2.2, scale) * xHeight,
    paragraphGap: between(0.45, 0.8, scale) * xHeight,
    gutter: between(2, 3.2, scale) * xHeight,
    margin: between(safeZone.value, airy, Math.min(1, scale * 2)),
    lotWindow: {
      width: between(lotWindow.minimum.width, lotWindow.largest.width, scale),
      height: between(lotWindow.minimum.height, lotWindow.largest.height, scale),
    },
    nameFactor: between(2.4, 4.6, scale) * display,
    thin: rule.thin,
    heavy: rule.heavy,
  };
}
