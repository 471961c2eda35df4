import { type Millimetres, MM_PER_INCH } from '../quantity/length.ts';
import type { Rectangle, SymbolGeometry } from './geometry.ts';
import {
  barHeight,
  bearerSpec,
  digitSpec,
  leastX,
  NOMINAL_X,
  wideToNarrow,
  wideToNarrowRange,
} from './spec.ts';
import type { EncodedSymbol } from './symbols.ts';

/**
 * A raster paints a dot that an edge only touches, or one whose middle is covered, as the printer's driver likes; an
 * edge drawn this share of a dot inside gives the same dots under either rule.
 */
export const EDGE_INSET = 0.1;

/** Size of one dot. @param dpi dots per inch, for example 203.2 */
export const dotSize = (dpi: number): Millimetres => MM_PER_INCH / dpi;

/** A length cut down to whole dots. */
export const wholeDots = (length: Millimetres, dpi: number): number =>
  Math.floor(length / dotSize(dpi) + 1e-9);

export interface DotOptions {
  /** Resolution of the printer, dots per inch. */
  readonly dpi: number;
  /** Widest box with quiet zones. */
  readonly maxWidth?: Millimetres;
  /** Bearer bars at the top and the bottom of ITF-14; default true. */
  readonly bearerBars?: boolean;
  /** Height of the bars where they are cut short. */
  readonly barHeight?: Millimetres;
  /** X-dimension wanted, default the target of the symbol; the nearest possible one is taken. */
  readonly x?: Millimetres;
}

/** A symbol at its size with every edge of a bar on a boundary of the printer's dots. */
export interface DotGeometry extends SymbolGeometry {
  /** Dots of a narrow element. */
  readonly dots: number;
  /** Dots of a wide element of ITF-14; equal to `dots` elsewhere. */
  readonly wideDots: number;
}

/** Dots of a wide element at those of a narrow one, nearest to the target ratio; null outside the range. */
export function wideDotsOf(dots: number): number | null {
  const wide = Math.round(dots * wideToNarrow);
  const { min, max } = wideToNarrowRange;
  return [wide, wide - 1, wide + 1].find(at => at / dots >= min && at / dots <= max) ?? null;
}

/**
 * Numbers of dots that a narrow element of the symbol may have at a resolution, ascending; empty where the printer is
 * too coarse for the symbol.
 */
export function possibleDots({ spec }: EncodedSymbol, dpi: number): readonly number[] {
  const dot = dotSize(dpi);
  const least = Math.ceil(leastX(spec, true) / dot - 1e-9);
  const most = Math.floor(spec.x.max / dot + 1e-9);
  const found = Array.from({ length: Math.max(0, most - least + 1) }, (_, at) => least + at);
  return spec.name === 'ITF-14' ? found.filter(dots => wideDotsOf(dots) !== null) : found;
}

/**
 * A symbol on the dots of a printer: the X-dimension nearest to the wanted one that is a whole number of dots and
 * fits, never under the least of its specification. Null where no such size fits.
 */
export function symbolOnDots(symbol: EncodedSymbol, options: DotOptions): DotGeometry | null {
  const { dpi, maxWidth = Number.POSITIVE_INFINITY, x = symbol.spec.x.target } = options;
  const fitting = possibleDots(symbol, dpi)
    .map(dots => lay(symbol, dots, options))
    .filter(({ width }) => width <= maxWidth + 1e-9);
  const away = (geometry: DotGeometry) => Math.abs(geometry.x - x);
  return fitting.reduce<DotGeometry | null>(
    (best, next) => (best === null || away(next) < away(best) - 1e-9 ? next : best),
    null,
  );
}

function lay(symbol: EncodedSymbol, dots: number, options: DotOptions): DotGeometry {
  const { spec, bars, digits, text } = symbol;
  const { dpi, bearerBars = true } = options;
  const dot = dotSize(dpi);
  const x = dots * dot;
  const wideDots = spec.name === 'ITF-14' ? wideDotsOf(dots)! : dots;
  const up = (length: Millimetres) => Math.ceil(length / dot - 1e-9);
  const places = onGrid(bars, dots, wideDots);
  const barsDots = places.at(-1)!.end;
  // The quiet zones of a symbol below the least size of presses are those of that size.
  const zoneX = Math.max(x, spec.x.min);
  const left = up(spec.quietZone.left * zoneX);
  const right = up(spec.quietZone.right * zoneX);
  const bearer = spec.name === 'ITF-14' && bearerBars ? bearerSpec.modules * dots : 0;
  const height = up(options.barHeight ?? barHeight(spec, zoneX));
  const inset = EDGE_INSET;
  const rectangle = (from: number, to: number, top: number, bottom: number): Rectangle => ({
    x: (from + inset) * dot,
    y: (top + inset) * dot,
    width: (to - from - 2 * inset) * dot,
    height: (bottom - top - 2 * inset) * dot,
  });
  const total = left + barsDots + right;
  // Bars reach into the bearers, so that no gap opens between them.
  const reach = bearer > 0 ? 1 : 0;
  const drawn = places.map(({ start, end, guard }) =>
    rectangle(
      left + start,
      left + end,
      bearer - reach,
      bearer + height + reach + (guard ? up(spec.guardExtension * x) : 0),
    ),
  );
  if (bearer > 0)
    drawn.push(rectangle(0, total, 0, bearer), rectangle(0, total, bearer + height, 2 * bearer + height));
  const digitHeight = digitSpec.heightModules * NOMINAL_X * (spec.fixedHeight ? 1 : zoneX / NOMINAL_X);
  const boxHeight = (2 * bearer + height) * dot;
  const gap = Math.max(digitSpec.gapModules * x, spec.fixedHeight ? digitSpec.fixedHeightGap : 0);
  const baseline = boxHeight + gap + digitHeight;
  return {
    x,
    dots,
    wideDots,
    magnification: (x / NOMINAL_X) * 100,
    width: total * dot,
    height: baseline,
    barsWidth: barsDots * dot,
    bars: drawn,
    digits: digits.map(({ text: digit, centre, small }) => ({
      text: digit,
      centre: left * dot + (spec.fixedHeight ? (barsDots * dot) / 2 : centre * x),
      baseline,
      height: digitHeight,
      maxWidth:
        digit === text || digit.includes(' ') ? total * dot : (small ? digitSpec.smallWidthModules : 6.5) * x,
    })),
    quietZone: { x: 0, y: 0, width: total * dot, height: boxHeight },
  };
}

/** Bars with their first and past their last dot. */
function onGrid(bars: EncodedSymbol['bars'], dots: number, wideDots: number) {
  const width = (modules: number) => (Number.isInteger(modules) ? modules * dots : wideDots);
  let [at, past] = [0, 0];
  return bars.map(bar => {
    const space = bar.x - past;
    at += space > 1e-9 ? width(space) : 0;
    const start = at;
    at += width(bar.width);
    past = bar.x + bar.width;
    return { start, end: at, guard: bar.guard };
  });
}
