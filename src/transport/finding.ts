import type { PackingGroup } from '../reference/transport/table-entry.ts';
import type { Fact } from './fact.ts';

/** A class that the material meets, with its packing group. */
export interface Hazard {
  /** `3`, `5.1`, `8`, `Comb liq`. */
  readonly class: string;
  readonly group: PackingGroup | null;
  /** Route that gives the packing group of Division 6.1. */
  readonly route?: 'oral' | 'dermal' | 'inhalation';
  /** The worst packing group by mouth or skin beside the one by inhalation (173.2a(b), Note 2). */
  readonly otherRoutes?: PackingGroup | null;
  /** `skin` or `metals` for Class 8. */
  readonly by?: string;
  /** Whether a test decides it; a class worked out from ingredients gives way to the table. */
  readonly tested: boolean;
}

/** What a test or a figure that is missing could show. */
export interface Case {
  readonly id: string;
  readonly values: Fact['values'];
  /** The hazard of the class in that case; `none` where it is not met, `approval` where tests and lists assign it. */
  readonly hazard: Hazard | 'none' | 'approval';
}

/** Something that is missing, with the cases it could decide between. */
export interface Missing extends Fact {
  readonly class: string;
  readonly cases: readonly Case[];
  /**
   * `class`: the class is open. `group`: the class is sure, its packing group is not. `confirm`: an answer follows
   * from calculation, and a test may change it.
   */
  readonly decides: 'class' | 'group' | 'confirm';
}

/** The result of examining one class. */
export interface Finding {
  readonly hazards: readonly Hazard[];
  readonly because: readonly Fact[];
  readonly missing: readonly Missing[];
}

export const finding = (part: Partial<Finding>): Finding => ({
  hazards: [],
  because: [],
  missing: [],
  ...part,
});

/** Classes of hazards, in their order. */
export const namesOf = (hazards: readonly Hazard[]): string[] => hazards.map(hazard => hazard.class);
