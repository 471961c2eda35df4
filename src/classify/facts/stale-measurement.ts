import type { Exact } from '../../quantity/exact.ts';

/** A constituent with its percents in the formula that was measured and in that of the record; null where it is not in it. */
export interface MovedConstituent {
  /** Place in the list of constituents; null where the formula no longer has it. */
  readonly constituent: number | null;
  /** As the formula names it, else as the measurement does. */
  readonly name: string;
  readonly before: { readonly low: Exact; readonly high: Exact } | null;
  readonly now: { readonly low: Exact; readonly high: Exact } | null;
}

/** Properties measured on another formula than that of the record. */
export interface StaleMeasurement {
  /** Measured on another formula than that of the record. */
  readonly id: 'stale-measurement';
  readonly properties: readonly {
    readonly property: string;
    /** Revision or day of the formula that was measured. */
    readonly measuredOn: string | null;
    /** What is no longer as it was when the property was measured. */
    readonly moved: readonly MovedConstituent[];
  }[];
  readonly revision: string | null;
  readonly revised: string | null;
}
