import type { ProductFact } from '../reference/label-data/rules.ts';
import type { OmissionReason } from './omission-reason.ts';

/** A statement that the law prescribes, filled in, with its code. */
export interface Statement {
  readonly code: string;
  readonly text: string;
  /** BCP 47, where the text is not in the language of the document. */
  readonly language?: string;
}

export type PrecautionGroup = 'general' | 'prevention' | 'response' | 'storage' | 'disposal';

export interface PrecautionaryStatement extends Statement {
  readonly group: PrecautionGroup;
  /** Condition with which the text begins, up to its colon: `If in eyes:`; absent where it has none. */
  readonly lead?: string;
  /** Set where no revision prints these codes together: the paragraph under which they are combined here. */
  readonly combinedUnder?: string;
}

export type SignalWord = 'Danger' | 'Warning';

export type PictogramCode =
  | 'GHS01'
  | 'GHS02'
  | 'GHS03'
  | 'GHS04'
  | 'GHS05'
  | 'GHS06'
  | 'GHS07'
  | 'GHS08'
  | 'GHS09';

/** Something left off the label, with the reason and the paragraph. */
export interface Omission {
  readonly what: string;
  readonly why: OmissionReason;
  readonly cite: string;
}

/** A line that no law prescribes, proposed for the label until the record keeps it or leaves it out. */
export interface Proposed extends Statement {
  readonly cite: string;
}

/** A statement that stands because nobody has said whether its condition of use is met. */
export interface Conditional {
  /** Code as the table calls for it. */
  readonly statement: string;
  /** Id of the condition in the table, and the condition in its words. */
  readonly condition: string;
  readonly text: string;
  /** Fact of the record that answers it; null where it is answered by omitting the statement with a reason. */
  readonly needs: ProductFact | null;
}

/** What the record says of a statement and this label has no use for. */
export interface Unused {
  readonly block: 'words' | 'choose' | 'keep' | 'omit' | 'add';
  readonly code: string;
  readonly why: 'not-on-label' | 'no-such-field' | 'no-such-alternative' | 'no-ground';
}

/** What the law puts on the label for a classification, in the order in which it is shown. */
export interface LabelElements {
  readonly signalWord: SignalWord | null;
  readonly pictograms: readonly PictogramCode[];
  readonly hazardStatements: readonly Statement[];
  readonly precautionaryStatements: readonly PrecautionaryStatement[];
  /** EUH statements, unknown-toxicity statements and other supplemental text. */
  readonly supplemental: readonly Statement[];
  /** What was left off and why (precedence rules), for the reviewer. */
  readonly omitted: readonly Omission[];
  /** Statements that the law calls for and that lack words of the maker, and hazards without a row in the table. */
  readonly missing: readonly Omission[];
  /** Statements that stand because a condition of use is unknown. */
  readonly conditional: readonly Conditional[];
  /** Lines on the label that nobody has yet kept or left out. */
  readonly proposed: readonly Proposed[];
  readonly unused: readonly Unused[];
}
