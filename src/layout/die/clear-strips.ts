import type { Millimetres } from '../../quantity/length.ts';
import type { Die } from './die.ts';

/** A strip from the upper to the lower edge of a die that nothing is printed in. */
export interface ClearStrip {
  readonly what: 'fold' | 'overlap';
  readonly from: Millimetres;
  readonly to: Millimetres;
}

/** The strips round the folds of a die, as wide as the distance from the cut on both sides, and the one that is overlapped. */
export function clearStrips(
  { width, panels = 1, overlap = 0 }: Die,
  safe: Millimetres,
): readonly ClearStrip[] {
  const folds = Array.from({ length: panels - 1 }, (_, at): ClearStrip => {
    const place = ((at + 1) * width) / panels;
    return { what: 'fold', from: place - safe, to: place + safe };
  });
  return overlap > 0 ? [...folds, { what: 'overlap', from: width - overlap, to: width }] : folds;
}
