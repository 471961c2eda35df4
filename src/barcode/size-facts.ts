import type { Millimetres } from '../quantity/length.ts';
import { barHeight, leastX, NOMINAL_X, type SymbolSpec, smallestDiameter, truncationAdvice } from './spec.ts';

/** How the bars stand on a container: side by side as a fence, or round it as the rungs of a ladder. */
export type Standing = 'fence' | 'ladder';

/** What is to be told of the size of a symbol; lengths in millimetres. */
export type SizeFact =
  | {
      readonly id: 'x-below-least' | 'x-above-most';
      readonly x: Millimetres;
      readonly limit: Millimetres;
      readonly magnification: number;
    }
  | {
      readonly id: 'truncated';
      readonly height: Millimetres;
      readonly required: Millimetres;
      /** More is taken off than is advised where nothing else is possible. */
      readonly beyondAdvice: boolean;
      readonly advised: number;
      readonly cite: string;
    }
  | { readonly id: 'on-demand-size'; readonly x: Millimetres; readonly least: Millimetres }
  | {
      readonly id: 'turned' | 'too-curved';
      readonly diameter: Millimetres;
      readonly leastDiameter: Millimetres;
    };

/** X-dimension of a magnification. @param percent of the nominal size, for example 80 to 200 */
export const xOfMagnification = (percent: number): Millimetres => (NOMINAL_X * percent) / 100;

/**
 * What is to be told of a symbol's size: outside the range of its specification (80 to 200 % of EAN/UPC at the point
 * of sale), bars cut short, bars turned or too curved on a cylinder.
 */
export function sizeFacts(
  spec: SymbolSpec,
  x: Millimetres,
  {
    height,
    diameter,
    standing = 'fence',
    onDemand = false,
  }: {
    readonly height?: Millimetres;
    readonly diameter?: Millimetres;
    readonly standing?: Standing;
    /** Printed by an office or thermal printer. */
    readonly onDemand?: boolean;
  } = {},
): SizeFact[] {
  const facts: SizeFact[] = [];
  const magnification = (x / NOMINAL_X) * 100;
  const least = leastX(spec, onDemand);
  if (x < least - 1e-9) facts.push({ id: 'x-below-least', x, limit: least, magnification });
  else if (x < spec.x.min - 1e-9) facts.push({ id: 'on-demand-size', x, least: spec.x.min });
  if (x > spec.x.max + 1e-9) facts.push({ id: 'x-above-most', x, limit: spec.x.max, magnification });
  const required = barHeight(spec, Math.max(x, spec.x.min));
  if (height !== undefined && height < required - 1e-6) {
    const { advised, cite } = truncationAdvice;
    const beyondAdvice = height < required * (1 - advised) - 1e-6;
    facts.push({ id: 'truncated', height, required, beyondAdvice, advised, cite });
  }
  if (diameter !== undefined) {
    const leastDiameter = smallestDiameter(spec.modules * x);
    if (standing === 'ladder') facts.push({ id: 'turned', diameter, leastDiameter });
    else if (diameter < leastDiameter - 1e-6) facts.push({ id: 'too-curved', diameter, leastDiameter });
  }
  return facts;
}
