import type { ClassResult } from '../context.ts';
import type { Provision } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';
import { isMoreSevere } from '../worst.ts';

interface Worse {
  readonly result: ClassResult;
  readonly other: Extract<ClassResult, { outcome: 'classified' }>;
}

/** Classes that specific limits make more severe: as classified, and with the limits applied. */
const worseWithin = (without: readonly ClassResult[], within: readonly ClassResult[]): readonly Worse[] =>
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
  cite: Provision,
): Warning[] =>
  worseWithin(without, within).map(({ result, other }) => ({
    id: 'us-specific-limits',
    class: result.class,
    now: result.outcome === 'classified' ? result.hazard.code : result.outcome,
    within: other.hazard.code,
    because: other.because,
    cites: [cite],
  }));
