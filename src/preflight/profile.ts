/** A label for the press. */
export interface LabelPreflight {
  readonly kind: 'label';
  /** Name of the spot ink of the cut line; undefined where the page has none (a panel to drop into artwork). */
  readonly dieInk?: string;
  /** What places and sizes are held against, in millimetres; without it they are not checked. */
  readonly geometry?: {
    /** From the cut. */
    readonly safe: number;
    /** Least height of the lower-case x. */
    readonly xHeight: number;
    /** Least side of a pictogram. */
    readonly pictogramSide: number;
  };
}

/** What places and sizes on a label of a roll printer are held against, in millimetres from its lower left corner. */
export interface PrinterLabel extends NonNullable<LabelPreflight['geometry']> {
  readonly dpi: number;
  /** The cut, which the file does not show. */
  readonly cut: readonly (readonly [number, number])[];
  /** Preprinted red frames: left and lower corner, and side of the square. */
  readonly frames: readonly { readonly left: number; readonly bottom: number; readonly side: number }[];
}

/** What a finished file is meant to be. */
export type PreflightProfile =
  | LabelPreflight
  | { readonly kind: 'sheet' }
  /** A label for a roll printer with black alone. */
  | {
      readonly kind: 'printer';
      /** A label of a pack, whose places and sizes are checked too; lengths in millimetres. */
      readonly label?: PrinterLabel;
    };
