import type { Warning } from '../classification.ts';
import type { ClassResult } from '../context.ts';
import { isMoreSevere } from '../corners.ts';

interface Worse {
  readonly result: ClassResult;
  readonly other: Extract<ClassResult, { outcome: 'classified' }>;
}

/** Classes that specific limits make more severe: as classified, and with the limits applied. */
export const worseWithin = (
  without: readonly ClassResult[],
  within: readonly ClassResult[],
): readonly Worse[] =>
  within.flatMap(other => {
    const result = without.find(
      candidate => candidate.class === other.class && candidate.route === other.route,
    )!;
    return other.outcome === 'classified' && isMoreSevere(other, result) ? [{ result, other }] : [];
  });

/**
 * Where a harmonised specific limit, which the US rule does not use by itself, would make the result more severe
 * (A.0.4.3.2; reading `us-specific-limits`).
 * @param without results as classified; @param within the same classes with specific limits applied.
 */
export const limitsWouldMatter = (
  without: readonly ClassResult[],
  within: readonly ClassResult[],
  cite: string,
): Warning[] =>
  worseWithin(without, within).map(({ result, other }) => {
    const now = result.outcome === 'classified' ? result.hazard.code : result.outcome.replace('-', ' ');
    return {
      id: 'us-specific-limits',
      text: `${result.class}: with the specific concentration limits of EU law the mixture would be ${other.hazard.code} instead of ${now} (${other.because.working}); choose reading us-specific-limits to use them`,
      cite,
    };
  });
