import type { Dated } from './dated.ts';
import type { Basis } from './thresholds.ts';

/** A text of a basis that applied or applies and is not held. */
export interface TextNotHeld {
  readonly text: string;
  /** Date from which it applied, YYYY-MM-DD. */
  readonly from: string;
  /** For what it may still be used beside the text held, and up to which date. */
  readonly mayBeUsed?: readonly { readonly for: string; readonly until: string }[];
  readonly cite?: string;
  readonly source: string;
}

/** A text of a basis that is held. */
export interface TextHeld {
  /** Its year and publication, or the date of its consolidation. */
  readonly text: string;
  readonly instrument: string;
  readonly physicalInstrument: string;
}

/** `hazard-data/<basis>/thresholds.json`: texts held, texts that are known but not held, and figures by date. */
export interface ThresholdFile {
  readonly id: Basis['id'];
  readonly title: string;
  readonly notHeld: readonly TextNotHeld[];
  /** Texts held, by the date from which each is in force. */
  readonly texts: Readonly<Record<string, TextHeld>>;
  readonly figures: Dated;
}
