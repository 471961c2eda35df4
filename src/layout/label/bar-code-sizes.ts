import { type SymbolGeometry, symbolGeometry } from '../../barcode/geometry.ts';
import { matrixGeometry } from '../../barcode/matrix-geometry.ts';
import { dotSize, EDGE_INSET, possibleDots, symbolOnDots } from '../../barcode/printer-dots.ts';
import { type SizeFact, sizeFacts, xOfMagnification } from '../../barcode/size-facts.ts';
import { leastX, NOMINAL_X, smallestDiameter, widestUprightBars } from '../../barcode/spec.ts';
import type { EncodedMatrix, EncodedSymbol } from '../../barcode/symbols.ts';
import type { Millimetres } from '../../quantity/length.ts';
import type { Tag } from '../frame.ts';

/** Part of the target size at which a printer may go below what a press may, where its dots leave nothing else. */
export const LAST_RESORT = 0.75;

/** How the bars stand: upright side by side as a fence, or as rungs of a ladder round a small bottle. */
export type Orientation = 'fence' | 'ladder';

/** The bar code of a label and what is asked of it. */
export interface BarCode {
  readonly symbol: EncodedSymbol | EncodedMatrix;
  readonly tag: Tag;
  readonly barWidthReduction: Millimetres;
  /** Of a printer that lays bars on its dots; a press has none. */
  readonly dpi?: number;
  /** Diameter of a cylindrical container, or null. */
  readonly diameter: Millimetres | null;
  /** Percent, or null where the layout may choose. */
  readonly magnification: number | null;
  /** Of bars cut short, or null. */
  readonly height: Millimetres | null;
}

/** An orientation with the X-dimension that goes with it. */
export interface Way {
  readonly turn: Orientation;
  readonly x: Millimetres;
}

const isMatrix = (symbol: BarCode['symbol']): symbol is EncodedMatrix => 'rows' in symbol;

/** X-dimensions that a printer can lay, ascending; null for a press, which lays any. */
function onPrinter({ symbol, dpi }: BarCode): readonly Millimetres[] | null {
  if (dpi === undefined) return null;
  const dot = dotSize(dpi);
  if (!isMatrix(symbol)) return possibleDots(symbol, dpi).map(dots => dots * dot);
  const { min, max } = symbol.spec.x;
  const least = Math.ceil(min / dot - 1e-9);
  return Array.from(
    { length: Math.max(0, Math.floor(max / dot + 1e-9) - least + 1) },
    (_, at) => (least + at) * dot,
  );
}

/**
 * The ways in which the bar code may stand at a part of its target size, the better one first; a fence is kept narrow
 * enough for the curvature of its container. Empty where a printer is too coarse for the symbol.
 */
export function orientations(code: BarCode, part: number): readonly Way[] {
  const { symbol, magnification, diameter, dpi } = code;
  const { spec } = symbol;
  const possible = onPrinter(code);
  const least =
    isMatrix(symbol) || part > LAST_RESORT ? symbol.spec.x.min : leastX(symbol.spec, dpi !== undefined);
  const wanted =
    magnification === null || isMatrix(symbol)
      ? Math.max(least, spec.x.target * part)
      : xOfMagnification(magnification);
  const modules = isMatrix(symbol) ? symbol.rows.length : symbol.spec.modules;
  const widest = diameter === null ? Number.POSITIVE_INFINITY : widestUprightBars(diameter) / modules;
  const nearest = (most: Millimetres): Millimetres | null => {
    if (!possible) return Math.min(wanted, most) < least - 1e-9 ? null : Math.min(wanted, most);
    const away = (x: number) => Math.abs(x - wanted);
    const fitting = possible.filter(x => x >= least - 1e-9 && x <= most + 1e-9);
    return fitting.length === 0 ? null : fitting.reduce((best, x) => (away(x) < away(best) ? x : best));
  };
  const [fence, ladder] = [nearest(widest), nearest(Number.POSITIVE_INFINITY)];
  return [
    ...(fence === null ? [] : [{ turn: 'fence' as const, x: fence }]),
    // A matrix turned is a matrix.
    ...(ladder === null || isMatrix(symbol) ? [] : [{ turn: 'ladder' as const, x: ladder }]),
  ];
}

/** Bars, digits and quiet zones at an X-dimension. */
export function geometryOf(
  { symbol, barWidthReduction, dpi, height }: BarCode,
  x: Millimetres,
): SymbolGeometry {
  const barHeight = height === null ? {} : { barHeight: height };
  if (!isMatrix(symbol))
    return dpi === undefined
      ? symbolGeometry(symbol, x, { barWidthReduction, ...barHeight })
      : symbolOnDots(symbol, { dpi, x, ...barHeight })!;
  const {
    width,
    height: high,
    bars,
  } = matrixGeometry(symbol, x, dpi === undefined ? 0 : EDGE_INSET * dotSize(dpi));
  return {
    x,
    magnification: (x / symbol.spec.x.target) * 100,
    width,
    height: high,
    barsWidth: symbol.rows[0]!.length * x,
    bars,
    digits: [],
    quietZone: { x: 0, y: 0, width, height: high },
  };
}

/** Least diameter at which the bars may stand upright at their smallest size. */
export const leastFenceDiameter = ({ symbol, dpi }: BarCode): Millimetres =>
  isMatrix(symbol) ? 0 : smallestDiameter(symbol.spec.modules * leastX(symbol.spec, dpi !== undefined));

/** What is to be told of the size at which a symbol is printed. */
export function factsOfSize({ symbol, dpi, height }: BarCode, x: Millimetres): readonly SizeFact[] {
  if (isMatrix(symbol)) return [];
  return sizeFacts(symbol.spec, x, { onDemand: dpi !== undefined, ...(height !== null && { height }) });
}

/** Measures of a symbol as it is printed at a part of its target size. */
export function barCodeOf(code: BarCode, part: number, turned: boolean) {
  const ways = orientations(code, part);
  const { x } = ways.find(({ turn }) => turn === (turned ? 'ladder' : 'fence')) ?? ways[0]!;
  const geometry = geometryOf(code, x);
  const rounded = (value: number) => Number(value.toFixed(3));
  const inset = (code.dpi === undefined ? 0 : EDGE_INSET * dotSize(code.dpi)) + code.barWidthReduction / 2;
  const left = Math.min(...geometry.bars.map(bar => bar.x)) - inset;
  const heights = geometry.bars.map(bar => bar.height);
  return {
    symbology: code.symbol.spec.name,
    x: rounded(x),
    magnification: Number(
      ((x / (isMatrix(code.symbol) ? code.symbol.spec.x.target : NOMINAL_X)) * 100).toFixed(1),
    ),
    height: rounded(
      isMatrix(code.symbol)
        ? code.symbol.rows.length * x
        : Math.min(...heights) + (code.dpi === undefined ? 0 : 2 * EDGE_INSET * dotSize(code.dpi)),
    ),
    quietZones: [rounded(left), rounded(geometry.width - left - geometry.barsWidth)] as const,
  };
}
