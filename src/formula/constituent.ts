import type { Exact } from '../quantity/exact.ts';
import type { GivenData } from '../record/given-data.ts';
import type { TradeSecret } from '../record/record-blocks.ts';

/** One substance of the mixture after raw materials are expanded. */
export interface Constituent {
  readonly name: string;
  /** CAS number, or null where the record gives none. */
  readonly cas: string | null;
  /** Percent by weight (by volume where the form is gas): both ends of the range, equal where there is none. */
  readonly low: Exact;
  readonly high: Exact;
  readonly given: GivenData;
  /** Raw materials through which it entered, outermost first; empty where it was named directly. */
  readonly via: readonly string[];
  readonly water: boolean;
  /** Claimed as a trade secret on any of its lines. */
  readonly tradeSecret?: TradeSecret | null;
  /** A raw material of which its supplier gives the hazards and not the composition. */
  readonly undisclosed?: boolean;
}

/** A formula as constituents that sum to 100 %. */
export interface Formula {
  readonly constituents: readonly Constituent[];
  /**
   * The corners of the ranges: each holds the percent of every constituent, in the order of `constituents`.
   * One corner where no range is given.
   */
  readonly corners: readonly (readonly Exact[])[];
}
