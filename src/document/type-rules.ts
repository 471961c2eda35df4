import type { Millimetres } from '../quantity/length.ts';

/** Least height of a kind of text with the paragraph that sets it. */
export interface LeastHeight {
  /** Of the lower-case x. */
  readonly xHeight?: Millimetres;
  /** Of the capitals. */
  readonly capHeight?: Millimetres;
  readonly cite: string;
}

/** Side of the square of a pictogram: one to be reached if possible, and the least. */
export interface PictogramSide {
  readonly wanted: Millimetres;
  readonly least: Millimetres;
  readonly cite: string;
}

/** Shorter and longer side that a label must have. */
export interface LeastLabel {
  readonly sides: readonly [Millimetres, Millimetres];
  readonly cite: string;
}

/** Sizes of a sign that is read from afar, in place of those of a press profile. */
export interface SignScale {
  /** X-height of running text: least and largest, and largest as part of the square root of the area of the die. */
  readonly least: Millimetres;
  readonly largest: Millimetres;
  readonly part: number;
  readonly pictogramSide: Millimetres;
}

/** What the law of a purpose asks of the type and the marks of its label; lengths in millimetres. */
export interface TypeRules {
  /** By the role that a text has in `label --json`. */
  readonly least: Readonly<Record<string, LeastHeight>>;
  /** Widest front of the container that is seen at once; null where the whole label is. */
  readonly front: Millimetres | null;
  /** Widest label that is seen at once; a wider one bears other words, which have not been laid out here. */
  readonly seen?: Millimetres;
  /** Paragraph that sets the size of the whole, for a refusal. */
  readonly cite: string;
  /** The hazard block stands in a border, and there are no pictograms. */
  readonly bordered: boolean;
  readonly pictogram?: PictogramSide;
  /** Whether the frames of pictograms must be red; red by 29 CFR 1910.1200 where absent. */
  readonly frames?: { readonly red: boolean; readonly cite: string };
  readonly label?: LeastLabel;
  readonly sign?: SignScale;
  /** All text is black on white: the band in the maker's color is left out. */
  readonly plain?: boolean;
}
