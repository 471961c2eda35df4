import type { Millimetres } from '../quantity/length.ts';

/** Least height of a kind of text with the paragraph that sets it. */
export interface LeastHeight {
  /** Of the lower-case x. */
  readonly xHeight?: Millimetres;
  /** Of the capitals. */
  readonly capHeight?: Millimetres;
  readonly cite: string;
}

/** What the law of a purpose asks of the type of its label; lengths in millimetres. */
export interface TypeRules {
  /** By the role that a text has in `label --json`. */
  readonly least: Readonly<Record<string, LeastHeight>>;
  /** Widest front of the container that is seen at once; null where the whole label is. */
  readonly front: Millimetres | null;
  /** Paragraph that sets the size of the whole, for a refusal. */
  readonly cite: string;
  /** The hazard block stands in a border, and there are no pictograms. */
  readonly bordered: boolean;
}
