import type { Hazard } from '../notation/hazard.ts';
import type { AteValues, MultiplicationFactors, SpecificLimit } from '../notation/limit.ts';
import type { Exact } from '../quantity/exact.ts';

/** Endpoints for which an ingredient may have no usable data. */
export type Endpoint = 'acute-oral' | 'acute-dermal' | 'acute-inhalation' | 'aquatic';

/** What the available oxygen of an organic peroxide is calculated from. */
export interface PeroxideData {
  /** Peroxygen groups in a molecule. */
  readonly groups: number;
  /** g/mol */
  readonly molarMass: Exact;
}

/** A hazard that was not written in the notation, and how it was read. */
export interface ReadAs {
  readonly written: string;
  readonly read: readonly string[];
}

/** What the record says of the harmonised entry of a constituent. */
export interface HarmonisedAnswer {
  /** Index number of the entry that is meant, where a CAS number has several. */
  readonly entry: string | null;
  /** Notes of CLP Annex VI 1.1.3.1 whose condition for leaving classes out is shown: `J`, `P`. */
  readonly notes: readonly string[];
  /** Percent by weight of the metallic element in the substance, for Note 1. */
  readonly metal?: Exact;
  readonly source: string;
}

/** What the record itself says of a constituent, read from its notation. */
export interface GivenData {
  /** Present: replaces the whole harmonised entry. An empty list with a source means known and not classified. */
  readonly hazards?: readonly Hazard[];
  readonly limits?: readonly SpecificLimit[];
  readonly ate?: AteValues;
  readonly mFactors?: MultiplicationFactors;
  readonly peroxide?: PeroxideData;
  readonly harmonised?: HarmonisedAnswer;
  readonly unknown: readonly Endpoint[];
  /** False where summing does not hold for skin and eye (strong acid or base and the like). */
  readonly additive: boolean;
  /** True where the record says that the ingredient counts below the cut-off for relevant ingredients. */
  readonly relevant: boolean;
  readonly source: string | null;
  /** Hazards that the record words in another way than the notation. */
  readonly readAs?: readonly ReadAs[];
}
