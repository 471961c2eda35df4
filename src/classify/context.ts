import type { Scale } from '../quantity/scale.ts';
import type { Basis } from '../reference/thresholds.ts';
import type { ClassifiedHazard, OtherOutcome, Replaced } from './classification.ts';
import type { Because } from './facts/because.ts';
import type { Warning } from './facts/warning.ts';
import type { Mixture } from './ingredient.ts';
import type { ReadingId } from './readings.ts';

/** What a class rule works from. */
export interface Context {
  readonly mixture: Mixture;
  readonly basis: Basis;
  /** Where every comparison is made. */
  readonly scale: Scale;
  /** Whether specific concentration limits count (CLP Article 10; for us-hcs by choice). */
  readonly applyLimits: boolean;
  /** What is taken for a reading: the record's choice or the default. */
  take(reading: ReadingId): string;
}

interface ResultBase {
  /** Label of the class as listed in `otherClasses`. */
  readonly class: string;
  readonly route?: 'oral' | 'dermal' | 'inhalation';
  readonly because: Because;
  /** Readings of the law on which this result depends. */
  readonly readings?: readonly ReadingId[];
  readonly warnings?: readonly Warning[];
  /** Percent from which an ingredient without any data leaves the class undecided; absent where it cannot. */
  readonly floor?: number;
}

/** One class examined: given, with its category, or not, with its outcome. */
export type ClassResult =
  | (ResultBase & {
      readonly outcome: 'classified';
      readonly hazard: Omit<ClassifiedHazard, 'because'>;
      /** A milder category of the class that the mixture has besides, for other organs. */
      readonly beside?: ClassifiedHazard;
    })
  | (ResultBase & {
      readonly outcome: OtherOutcome;
      /** What the calculation said where evidence replaced it. */
      readonly calculated?: Replaced;
    });

/** A rule of one hazard class: pure, one result for each class or route it decides. */
export type ClassRule = (context: Context) => readonly ClassResult[];

/** Fields of a hazard that most classes leave empty. */
export const plainHazard = (
  hazardClass: string,
  category: string,
  statements: readonly string[],
): Omit<ClassifiedHazard, 'because'> => ({
  code: category ? `${hazardClass} ${category}` : hazardClass,
  hazardClass,
  category,
  route: null,
  form: null,
  effect: null,
  organs: [],
  statements,
});
