import type { Position } from '../report/diagnostic.ts';

/** What a claim is about, each under a law of its own. */
export type ClaimKind = 'pesticide' | 'environment' | 'origin' | 'safety';

/**
 * What the words are worth: `claim` makes the product a pesticide, `unqualified` must not stand without a
 * qualification, `contradicts` a hazard statement of the label, `ask` depends on the context, `substantiate` needs
 * evidence.
 */
export type ClaimVerdict = 'contradicts' | 'claim' | 'unqualified' | 'ask' | 'substantiate';

/** Words of the maker that make a claim. */
export interface Claim {
  readonly kind: ClaimKind;
  /** Rule of `hazard-data/claims/`. */
  readonly rule: string;
  readonly verdict: ClaimVerdict;
  /** The words as they stand. */
  readonly words: string;
  /** `copy.tagline`, `copy.directions[1]` */
  readonly path: string;
  /** Offset of the words in their text. */
  readonly from: number;
  /** Where they stand in the file; without line where the record never was text. */
  readonly at: Position;
  readonly cite: string;
  /** Hazard statements of the label that say otherwise. */
  readonly against: readonly string[];
}

/** A text of the record to screen, with the place of each of its words. */
export interface ClaimText {
  readonly path: string;
  readonly text: string;
  /** Place of each run of letters between blanks. */
  readonly places: readonly Position[];
  readonly file: string;
}
