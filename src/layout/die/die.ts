import type { Millimetres } from '../../quantity/length.ts';

export type DieShape = 'rectangle' | 'oval';

/** The die of one label: what is cut. */
export interface Die {
  readonly width: Millimetres;
  readonly height: Millimetres;
  /** At most half the short side; an oval has none. */
  readonly cornerRadius: Millimetres;
  /** An oval of equal sides is round. Default: a rectangle. */
  readonly shape?: DieShape;
  /** At the right edge of a wrap-around label, covered by its other end: free of text and codes. Default 0. */
  readonly overlap?: Millimetres;
  /** Equal panels side by side in a fold-out label, parted by folds. Default 1. */
  readonly panels?: number;
}
