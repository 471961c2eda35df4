import { findCategory, type HazardCategory } from '../notation/classes.ts';
import type { Scale } from '../quantity/scale.ts';
import type { AcuteKey, Basis } from '../reference/thresholds.ts';
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
  /** Sums of acute toxicity behind the result, one for each route and form. */
  readonly estimates?: readonly RouteEstimate[];
}

/** What the ingredients come to by one route and form. */
export interface RouteEstimate {
  readonly key: AcuteKey;
  /** mg/kg, ppmV or mg/L; null where nothing counts. */
  readonly ateMix: number | null;
  /** Percent of ingredients of unknown toxicity. */
  readonly unknown: number;
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

type Given = Omit<ClassifiedHazard, 'because'>;

/**
 * A hazard that a rule gives, with the statements of its category (`hazard-classes.json`) unless others are named; by
 * route or effect where the statement depends on it.
 */
export function hazardIn(hazardClass: string, category: string, more: Partial<Given> = {}): Given {
  const { code, category: entry } = findCategory(hazardClass, category)!;
  const { statements, route = null, effect = null } = more;
  return {
    code,
    hazardClass,
    category,
    form: null,
    organs: [],
    ...more,
    route,
    effect,
    statements: statements ?? statementsOf(entry, route, effect),
  };
}

function statementsOf(
  { byRoute, byEffect, statements }: HazardCategory,
  route: Given['route'],
  effect: Given['effect'],
): readonly string[] {
  const named = (byRoute && route && byRoute[route]) || (byEffect && effect && byEffect[effect]);
  return named ? [named] : statements;
}
