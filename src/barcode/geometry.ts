import type { Millimetres } from '../quantity/length.ts';
import { barHeight, bearerSpec, digitSpec, NOMINAL_X, type SymbolSpec } from './spec.ts';
import type { EncodedSymbol } from './symbols.ts';

export interface Rectangle {
  readonly x: Millimetres;
  readonly y: Millimetres;
  readonly width: Millimetres;
  readonly height: Millimetres;
}

/** A digit to be set in a text face: the middle of its base line and the height of the figure. */
export interface DigitSlot {
  readonly text: string;
  readonly centre: Millimetres;
  readonly baseline: Millimetres;
  readonly height: Millimetres;
  /** Room for the digit; it is set smaller where the face is wider. */
  readonly maxWidth: Millimetres;
}

/** A symbol at its size; the origin is the upper left corner of the box with quiet zones, y downwards. */
export interface SymbolGeometry {
  readonly x: Millimetres;
  /** Percent of the nominal size, where the symbol has one. */
  readonly magnification: number;
  /** Whole box with quiet zones and digits. */
  readonly width: Millimetres;
  readonly height: Millimetres;
  /** Width of the bars alone. */
  readonly barsWidth: Millimetres;
  readonly bars: readonly Rectangle[];
  readonly digits: readonly DigitSlot[];
  /** Area in which nothing else may be printed. */
  readonly quietZone: Rectangle;
}

export interface GeometryOptions {
  /** Taken off every bar, half on each side, to make up for the gain of the press; default 0. */
  readonly barWidthReduction?: Millimetres;
  /** Bearer bars at the top and the bottom of ITF-14; default true. */
  readonly bearerBars?: boolean;
  /** Height of the bars where they are cut short; default the height that goes with the X-dimension. */
  readonly barHeight?: Millimetres;
}

/**
 * Bars and digits of a symbol at an X-dimension, all exact.
 * @param x in millimetres, within the range of the symbol's specification
 * @throws RangeError where `x` is outside that range, or the reduction leaves no bar
 */
export function symbolGeometry(
  { spec, bars, digits, text }: EncodedSymbol,
  x: Millimetres,
  { barWidthReduction = 0, bearerBars = true, ...options }: GeometryOptions = {},
): SymbolGeometry {
  const { min, max } = spec.x;
  if (x < min - 1e-9 || x > max + 1e-9) {
    throw new RangeError(`${spec.name} takes an X-dimension of ${min} to ${max} mm, got ${x}`);
  }
  if (barWidthReduction < 0 || barWidthReduction >= x) {
    throw new RangeError(`a bar width reduction of ${barWidthReduction} mm does not go with X = ${x} mm`);
  }
  const bearer = spec.name === 'ITF-14' && bearerBars ? bearerSpec.modules * x : 0;
  const height = options.barHeight ?? barHeight(spec, x);
  if (!(height > 0)) throw new RangeError(`bars cannot be ${height} mm high`);
  const left = spec.quietZone.left * x;
  const width = (spec.quietZone.left + spec.modules + spec.quietZone.right) * x;
  const digitHeight = digitSpec.heightModules * NOMINAL_X * (spec.fixedHeight ? 1 : x / NOMINAL_X);
  const gap = digitSpec.gapModules * x;
  const baseline = bearer * 2 + height + gap + digitHeight;
  const rectangles: Rectangle[] = bars.map(bar => ({
    x: left + bar.x * x + barWidthReduction / 2,
    y: bearer,
    width: bar.width * x - barWidthReduction,
    height: height + (bar.guard ? spec.guardExtension * x : 0),
  }));
  if (bearer > 0) {
    rectangles.push({ x: 0, y: 0, width, height: bearer });
    rectangles.push({ x: 0, y: bearer + height, width, height: bearer });
  }
  return {
    x,
    magnification: (x / NOMINAL_X) * 100,
    width,
    height: baseline,
    barsWidth: spec.modules * x,
    bars: rectangles,
    digits: digits.map(({ text: digit, centre, small }) => ({
      text: digit,
      centre: left + centre * x,
      baseline,
      height: digitHeight,
      maxWidth:
        digit === text || digit.includes(' ') ? width : (small ? digitSpec.smallWidthModules : 6.5) * x,
    })),
    quietZone: { x: 0, y: 0, width, height: bearer * 2 + height },
  };
}

/** Size of the box with quiet zones and digits at an X-dimension. */
export function symbolSize(spec: SymbolSpec, x: Millimetres): { width: Millimetres; height: Millimetres } {
  const { width, height } = symbolGeometry({ spec, text: '', bars: [], digits: [] }, x);
  return { width, height };
}
