import type { Bound } from '../../quantity/bound.ts';
import type { Exact } from '../../quantity/exact.ts';
import type { Provision } from './provision.ts';

/** What every reason has. */
export interface ReasonBase {
  readonly cites: readonly Provision[];
  /** Constituents below the cut-off for relevant ingredients, which the rule left out. */
  readonly leftOut?: readonly LeftOut[];
  /** Constituents at or above the upper end of their own specific range, which counts no longer. */
  readonly ended?: readonly Ended[];
  /** An extreme pH that evidence set aside. */
  readonly setAside?: ReserveSetAside;
  /** Constituents without data that leave the class undecided. */
  readonly lacking?: readonly number[];
}

/** A constituent's share in a sum. */
export interface Term {
  /** Place in the list of constituents. */
  readonly constituent: number;
  /** Percent of the mixture. */
  readonly amount: Exact;
  readonly weight: number;
  /** What the share is divided by: a limit of its own, an estimate. */
  readonly over?: Exact;
}

export interface LeftOut {
  readonly constituent: number;
  readonly amount: Exact;
  /** The cut-off in percent. */
  readonly from: number;
}

export interface Ended {
  readonly constituent: number;
  readonly amount: Exact;
  /** Percent from which the specific range holds no longer. */
  readonly upTo: Exact;
}

/** The sign that the law's own words give: met at the figure, or only beyond it. */
export type Operator = '>=' | '>' | '<=' | '<';

/** A measured value with what is known of the measurement. */
export interface Measurement {
  readonly value: Exact;
  readonly method: string | null;
  readonly source: string | null;
  /** Of a flash point. */
  readonly cup?: 'closed' | 'open' | null;
  /** The side of a limit, where no more is given; the value is then the worse end of it. */
  readonly bound?: Bound;
}

export interface ReserveSetAside {
  readonly pH: Exact;
  readonly operator: '<=' | '>=';
  readonly limit: number;
  readonly method: string;
  readonly source: string;
}
