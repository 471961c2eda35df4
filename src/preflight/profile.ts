/** A label for the press. */
export interface LabelPreflight {
  readonly kind: 'label';
  /** Name of the spot ink of the cut line; undefined where the page has none (a panel to drop into artwork). */
  readonly dieInk?: string;
  /** The maker's color, in percent of process inks or a spot ink: words that stand on it may be white. */
  readonly brand?: { readonly cmyk: readonly number[]; readonly spot?: string };
  /** The label places artwork or a logo of the maker; without it no form and no picture may be placed. */
  readonly art?: {
    /** Most ink on one place, percent. */
    readonly inkLimit: number;
    /** Least pixels per inch. */
    readonly dpi: number;
    /** Inks of what is not printed, which artwork may not use. */
    readonly reservedInks: readonly string[];
    /**
     * Artwork lies under the label, which stands on white but in these places: left, bottom, right, top in millimetres
     * from the lower left corner of the trim. Left out where there is a logo alone.
     */
    readonly bare?: readonly (readonly [number, number, number, number])[];
  };
  /** The file is meant to claim PDF/X-4; a claim is checked in any case. */
  readonly pdfx4?: boolean;
  /** What places and sizes are held against, in millimetres; without it they are not checked. */
  readonly geometry?: {
    /** From the cut. */
    readonly safe: number;
    /** Least height of the lower-case x. */
    readonly xHeight: number;
    /** Texts whose capitals have a least height by law, as they are printed, spaces as one. */
    readonly capitals?: readonly { readonly text: string; readonly height: number; readonly cite: string }[];
    /** Least side of a pictogram. */
    readonly pictogramSide: number;
    /** Strips from upper to lower edge that nothing may be printed in, from the left edge: folds, and what is overlapped. */
    readonly clear?: readonly {
      readonly what: 'fold' | 'overlap';
      readonly from: number;
      readonly to: number;
    }[];
  };
}

/** What places and sizes on a label of a roll printer are held against, in millimetres from its lower left corner. */
export interface PrinterLabel extends NonNullable<LabelPreflight['geometry']> {
  readonly dpi: number;
  /** The cut, which the file does not show. */
  readonly cut: readonly (readonly [number, number])[];
  /** Mark for the eye of the labeler, which may stand at the very edge. */
  readonly eyeMark?: {
    readonly left: number;
    readonly bottom: number;
    readonly width: number;
    readonly height: number;
  };
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
