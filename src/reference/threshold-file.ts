import type { Basis, Thresholds } from './thresholds.ts';

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

/** `hazard-data/<basis>/thresholds.json`: texts held with their figures, and texts that are known but not held. */
export interface ThresholdFile {
  readonly id: Basis['id'];
  readonly title: string;
  readonly notHeld: readonly TextNotHeld[];
  readonly versions: readonly Thresholds[];
}
