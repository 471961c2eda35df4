import type { Hazard } from '../notation/hazard.ts';
import type { AteValues, MultiplicationFactors, SpecificLimit } from '../notation/limit.ts';
import type { Exact } from '../quantity/exact.ts';

/** Endpoints for which an ingredient may have no usable data. */
export type Endpoint = 'acute-oral' | 'acute-dermal' | 'acute-inhalation' | 'aquatic';

/** What the record itself says of a constituent, read from its notation. */
export interface GivenData {
  /** Present: replaces the whole harmonised entry. An empty list with a source means known and not classified. */
  readonly hazards?: readonly Hazard[];
  readonly limits?: readonly SpecificLimit[];
  readonly ate?: AteValues;
  readonly mFactors?: MultiplicationFactors;
  readonly unknown: readonly Endpoint[];
  /** False where summing does not hold for skin and eye (strong acid or base and the like). */
  readonly additive: boolean;
  /** True where the record says that the ingredient counts below the cut-off for relevant ingredients. */
  readonly relevant: boolean;
  readonly source: string | null;
}

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
