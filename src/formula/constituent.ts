import type { Exact } from '../quantity/exact.ts';
import type { GivenData } from '../record/given-data.ts';
import type { TradeSecret } from '../record/record-blocks.ts';

/** One substance of the mixture after raw materials are expanded. */
export interface Constituent {
  readonly name: string;
  /** CAS number, or null where the record gives none. */
  readonly cas: string | null;
  /**
   * Percent by weight (by volume where the form is gas): the least and the greatest that a mixture of 100 % can have,
   * equal where there is no range.
   */
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

/** Percent of every constituent, in their order; together 100. */
export type Composition = readonly Exact[];

/** A formula as constituents that sum to 100 %. */
export interface Formula {
  readonly constituents: readonly Constituent[];
  /** Whether any percent is a range. */
  readonly ranged: boolean;
  /**
   * Of all compositions within the ranges the one whose weighted sum is greatest.
   * @param weights of one percent of each constituent, in their order.
   */
  most(weights: readonly number[]): Composition;
  /** Set where the compositions to look at are chosen already. */
  readonly chosen?: readonly Composition[];
}
