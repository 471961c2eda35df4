import type { ClassResult } from '../context.ts';
import type { Provision } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';
import { isMoreSevere } from '../worst.ts';

const codeOf = (result: ClassResult): string =>
  result.outcome === 'classified' ? result.hazard.code : result.outcome;

// A sub-category more or less changes neither limit nor statement.
const bare = (code: string): string => code.replace(/[A-C]$/, '');

const isSevere = ({ outcome }: ClassResult): boolean => outcome === 'classified';

/**
 * Where a harmonised specific limit, which the US rule does not use by itself, would make the result more severe or
 * milder (A.0.4.3.2, A.0.4.3.3; reading `us-specific-limits`).
 * @param without results as classified; @param within the same classes with specific limits applied.
 */
export function limitsWouldMatter(
  without: readonly ClassResult[],
  within: readonly ClassResult[],
  cite: Provision,
): Warning[] {
  const warnings: Warning[] = [];
  for (const other of within) {
    const result = without.find(
      candidate => candidate.class === other.class && candidate.route === other.route,
    )!;
    const worse = isSevere(other) && isMoreSevere(other, result);
    const milder =
      isSevere(result) && isMoreSevere(result, other) && bare(codeOf(result)) !== bare(codeOf(other));
    if (worse || milder)
      warnings.push({
        id: 'us-specific-limits',
        class: result.class,
        milder,
        now: codeOf(result),
        within: codeOf(other),
        because: other.because,
        cites: [cite],
      });
  }
  return warnings;
}
