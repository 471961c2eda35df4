import {
  bracketed,
  dataCharacters,
  type ElementString,
  inSymbolOrder,
} from '../../barcode/element-strings.ts';
import { type DotGeometry, symbolOnDots } from '../../barcode/printer-dots.ts';
import { type Environment, gs1128Limits } from '../../barcode/spec.ts';
import { type EncodedSymbol, encodeSymbol } from '../../barcode/symbols.ts';
import type { Millimetres } from '../../quantity/length.ts';

/** A symbol on the dots of a printer with what it says. */
export interface PlacedSymbol {
  readonly symbol: EncodedSymbol;
  readonly geometry: DotGeometry;
  readonly elements: readonly ElementString[];
}

/**
 * Element strings as few GS1-128 symbols as fit a width, groups kept together and in their order; null where a group
 * alone is too wide or too long for a symbol.
 */
export async function fitElements(
  groups: readonly (readonly ElementString[])[],
  environment: Environment,
  dpi: number,
  maxWidth: Millimetres,
): Promise<PlacedSymbol[] | null> {
  const placed: PlacedSymbol[] = [];
  for (const group of groups.filter(({ length }) => length > 0)) {
    const last = placed.at(-1);
    const together = last && (await fitOne([...last.elements, ...group], environment, dpi, maxWidth));
    if (together) {
      placed.splice(-1, 1, together);
      continue;
    }
    const alone = await fitOne(group, environment, dpi, maxWidth);
    if (!alone) return null;
    placed.push(alone);
  }
  return placed;
}

async function fitOne(
  given: readonly ElementString[],
  environment: Environment,
  dpi: number,
  maxWidth: Millimetres,
): Promise<PlacedSymbol | null> {
  const elements = inSymbolOrder(given);
  if (dataCharacters(elements) > gs1128Limits.dataCharacters) return null;
  const symbol = await encodeSymbol('GS1-128', bracketed(elements), environment);
  const geometry = symbolOnDots(symbol, { dpi, maxWidth: Math.min(maxWidth, gs1128Limits.width) });
  return geometry && { symbol, geometry, elements };
}
