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
    /** Texts whose capitals have a least height by law, as they are printed, spaces as one. */
    readonly capitals?: readonly { readonly text: string; readonly height: number; readonly cite: string }[];
    /** Least side of a pictogram. */
    readonly pictogramSide: number;
  };
}

/** What a finished file is meant to be. */
export type PreflightProfile =
  | LabelPreflight
  | { readonly kind: 'sheet' }
  /** A label for a roll printer with black alone. */
  | { readonly kind: 'printer' };
