import type { Exact } from '../quantity/exact.ts';

/** A specific concentration limit: the range of an ingredient in which the mixture takes a class. */
export interface SpecificLimit {
  readonly hazardClass: string;
  readonly category: string;
  /** `Skin Corr. 1B` */
  readonly code: string;
  /** H-code with its letters where one was written: `H360D`. */
  readonly statement: string | null;
  /** Lower bound in percent; null where only an upper bound is given. */
  readonly low: Exact | null;
  readonly lowInclusive: boolean;
  /** Upper bound in percent; null where open. */
  readonly high: Exact | null;
  readonly highInclusive: boolean;
}

/** Acute toxicity estimates by route and form: mg/kg, mg/kg, ppmV, mg/L, mg/L. */
export interface AteValues {
  readonly oral?: Exact;
  readonly dermal?: Exact;
  readonly gas?: Exact;
  readonly vapour?: Exact;
  readonly mist?: Exact;
}

/** Multiplication factors for very toxic aquatic ingredients (CLP 4.1.3.5.5.5). */
export interface MultiplicationFactors {
  readonly acute?: number;
  readonly chronic?: number;
}
