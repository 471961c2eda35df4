import type { Millimetres } from '../quantity/length.ts';
import { type SymbolGeometry, symbolGeometry } from './geometry.ts';
import { symbolOnDots } from './printer-dots.ts';
import { type SizeFact, type Standing, sizeFacts, xOfMagnification } from './size-facts.ts';
import { leastX, smallestDiameter, widestUprightBars } from './spec.ts';
import type { EncodedSymbol } from './symbols.ts';

/** What prints the symbol: a press, exactly, or a roll printer on its dots. */
export type Printing =
  | { readonly kind: 'press'; readonly barWidthReduction?: Millimetres }
  | { readonly kind: 'dots'; readonly dpi: number };

/** What is asked of a symbol. */
export interface SizeWish {
  readonly printing: Printing;
  /** Percent of the nominal size, 80 to 200 at the point of sale; default the target of the specification. */
  readonly magnification?: number;
  /** Room for the whole box with quiet zones and digits, as it stands on the label. */
  readonly room?: { readonly width: Millimetres; readonly height: Millimetres };
  /** Bars may be cut short to fit the room; that is told. */
  readonly truncate?: boolean;
  /** Of a cylindrical container. */
  readonly diameter?: Millimetres;
  /** How the bars must stand; default a fence where the container is wide enough for it. */
  readonly standing?: Standing;
}

/** A symbol at the size found. */
export interface ChosenSize {
  readonly geometry: SymbolGeometry;
  readonly standing: Standing;
  readonly facts: readonly SizeFact[];
}

/**
 * The size of a symbol nearest to the one asked for that fits: at its own height, else with bars cut short where that
 * is allowed; upright, else turned as rungs of a ladder where the container is too narrow or the room asks for it.
 * Null where nothing fits. A size outside of the specification is never taken.
 */
export function chooseSize(symbol: EncodedSymbol, wish: SizeWish): ChosenSize | null {
  const heights = wish.truncate && wish.room ? [false, true] : [false];
  for (const cut of heights)
    for (const standing of standings(symbol, wish)) {
      const found = sized(symbol, standing, cut, wish);
      if (found) return found;
    }
  return null;
}

/** The ways in which the bars may stand, the better one first. */
function standings({ spec }: EncodedSymbol, { standing, diameter, printing }: SizeWish): readonly Standing[] {
  if (standing) return [standing];
  const least = leastX(spec, printing.kind === 'dots');
  const tooNarrow = diameter !== undefined && diameter < smallestDiameter(spec.modules * least) - 1e-9;
  return tooNarrow ? ['ladder'] : ['fence', 'ladder'];
}

function sized(symbol: EncodedSymbol, standing: Standing, cut: boolean, wish: SizeWish): ChosenSize | null {
  const { spec } = symbol;
  const { printing, room, diameter, magnification } = wish;
  const onDemand = printing.kind === 'dots';
  const turned = standing === 'ladder';
  const across = (turned ? room?.height : room?.width) ?? Number.POSITIVE_INFINITY;
  const up = (turned ? room?.width : room?.height) ?? Number.POSITIVE_INFINITY;
  const bars =
    diameter === undefined || turned ? Number.POSITIVE_INFINITY : widestUprightBars(diameter) / spec.modules;
  const wanted = magnification === undefined ? spec.x.target : xOfMagnification(magnification);
  const modules = spec.modules + spec.quietZone.left + spec.quietZone.right;
  const x = Math.min(wanted, bars, across / modules, spec.x.max);
  if (x < leastX(spec, onDemand) - 1e-9) return null;
  const draw = (at: Millimetres, barHeight?: Millimetres): SymbolGeometry | null => {
    const height = barHeight === undefined ? {} : { barHeight };
    if (printing.kind === 'press') {
      const { barWidthReduction = 0 } = printing;
      return symbolGeometry(symbol, at, { barWidthReduction, ...height });
    }
    const found = symbolOnDots(symbol, { dpi: printing.dpi, x: at, maxWidth: across, ...height });
    return found && found.x <= Math.min(bars, spec.x.max) + 1e-9 ? found : null;
  };
  const whole = draw(x);
  if (!whole) return null;
  const over = whole.height - up;
  const finish = (geometry: SymbolGeometry, height?: Millimetres): ChosenSize => ({
    geometry,
    standing,
    facts: sizeFacts(spec, geometry.x, {
      onDemand,
      standing,
      ...(height !== undefined && { height }),
      ...(diameter !== undefined && { diameter }),
    }),
  });
  if (over <= 1e-9) return finish(whole);
  if (cut) {
    const height = whole.quietZone.height - over;
    const short = height > 0 ? draw(x, height) : null;
    // On dots the height is rounded up by less than a dot.
    const again = short && short.height > up + 1e-9 ? draw(x, height - (short.height - up) - 1e-6) : short;
    return again && again.height <= up + 1e-9 ? finish(again, height) : null;
  }
  // Where the height is in proportion, a smaller symbol is lower.
  if (spec.fixedHeight) return null;
  const smaller = (x * up) / whole.height;
  if (smaller < leastX(spec, onDemand) - 1e-9) return null;
  const lower = draw(smaller);
  return lower && lower.height <= up + 1e-9 ? finish(lower) : null;
}
