/** A statement that the law prescribes, filled in, with its code. */
export interface Statement {
  readonly code: string;
  readonly text: string;
}

export type PrecautionGroup = 'general' | 'prevention' | 'response' | 'storage' | 'disposal';

export interface PrecautionaryStatement extends Statement {
  readonly group: PrecautionGroup;
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
  readonly why: string;
  readonly cite: string;
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
}
