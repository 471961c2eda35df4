import type { Millimetres } from '../quantity/length.ts';
import type { CaseSize } from './pallet.ts';

/** What a record may say of the outside of a case and of its pallet. */
export interface GivenCase {
  readonly count: number;
  readonly length?: Millimetres | null;
  readonly width?: Millimetres | null;
  readonly height?: Millimetres | null;
  /** Cases in a layer, as the shop stacks them. */
  readonly perLayer?: number | null;
  readonly layers?: number | null;
}

/** The outside of the case, where the record gives all three sides. */
export const givenSize = ({ length, width, height }: GivenCase): CaseSize | null =>
  length && width && height ? { length, width, height } : null;
