import type { Hazard } from '../../notation/hazard.ts';
import type { MultiplicationFactors, SpecificLimit } from '../../notation/limit.ts';
import type { SupplementalLimit } from '../../notation/parse-limit.ts';
import type { Exact } from '../../quantity/exact.ts';
import type { AcuteKey } from '../../reference/thresholds.ts';

/** A row of CLP Annex VI Table 3 that applies from a later date. */
export interface LaterEntry {
  readonly index: string;
  readonly act: string;
  /** YYYY-MM-DD */
  readonly from: string;
}

/** What of a harmonised entry is not in the data of the record that replace it. */
export interface LostData {
  /** Missing, or in a milder category. */
  readonly hazards: readonly Hazard[];
  /** Present, without their letters, organs or route. */
  readonly details: readonly Hazard[];
  readonly limits: readonly SpecificLimit[];
  readonly ate: readonly { readonly key: AcuteKey; readonly value: Exact }[];
  readonly mFactors: MultiplicationFactors;
  /** EUH codes. */
  readonly supplemental: readonly string[];
  readonly supplementalLimits: readonly SupplementalLimit[];
}
