import type { Basis, Thresholds } from '../reference/thresholds.ts';
import type { ClassResult, Context } from './context.ts';
import type { Provision } from './facts/provision.ts';
import type { Objective } from './ranges/objective.ts';

/** What other classes of the same mixture came to, evidence applied. */
export type Found = (rule: ClassRule) => readonly ClassResult[];

/**
 * One hazard class as it is judged. All that is asked of a class stands here or, for what needs no rule (title,
 * categories, statements), in `hazard-classes.json`; `class-rules.ts` is the one list of them.
 */
export interface ClassRule {
  /** Class as listed, under which evidence is given and results stand: `Skin Corr./Irrit.`. */
  readonly listed: string;
  /** Categories that are judged here, where another rule of the class has the others. */
  readonly categories?: readonly string[];
  /** Whether a basis has the class. */
  isOf(basis: Basis): boolean;
  /** The results of the class, none where the basis has not got it. Pure. */
  judge(context: Context, found: Found): readonly ClassResult[];
  /** Which way its sums get worse; absent where it looks at one ingredient at a time. */
  readonly objectives?: (context: Context) => readonly Objective[];
  /** Hazard classes whose specific concentration limits can change the result. */
  readonly limitedBy: readonly string[];
  /** Percent from which an ingredient of a category counts, and is disclosed; null where the law names none. */
  cutOff(figures: Thresholds, category: string): number | null;
  /** The paragraph with the criteria that a test answers, for classes that follow from tests. */
  readonly criteria?: (basis: Basis) => Provision | null;
  /** Endpoint in which an ingredient may be of unknown hazard. */
  readonly unknownAs?: 'aquatic';
}

/** For a class that every basis has. */
export const always = (): boolean => true;

/** The cut-off of a class for which the law names none. */
export const noCutOff = (): null => null;
