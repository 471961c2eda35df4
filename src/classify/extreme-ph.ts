import { compare, reaches, show } from '../quantity/sum.ts';
import type { Because } from './classification.ts';
import { type Context, citeHealth } from './context.ts';
import type { ReadingId } from './readings.ts';
import { isReserveEvidence } from './reserve.ts';

/**
 * pH 2 or less, or 11.5 or more, gives Category 1 unless evidence on reserve says otherwise
 * (A.2.3.1.3, A.3.3.1.2; CLP and UN 3.2.3.1.2, 3.3.3.1.2).
 */
export function extremePh(
  { mixture }: Context,
  basis: Context['basis'],
  rules: { readonly acid: number; readonly base: number; readonly cite: string },
  hazardClass: 'Skin Corr.' | 'Eye Dam.',
  used: Set<ReadingId>,
): Because | null {
  const pH = mixture.properties.pH?.value;
  if (!pH) return null;
  const isAcid = compare(pH, rules.acid) <= 0;
  if (!isAcid && !reaches(pH, rules.base)) {
    used.add('moderate-ph');
    return null;
  }
  used.add('extreme-ph');
  if (mixture.evidence.some(evidence => isReserveEvidence(evidence, hazardClass))) return null;
  return {
    rule: isAcid ? 'extreme pH (acid)' : 'extreme pH (base)',
    cite: citeHealth(basis, rules.cite),
    working: `pH ${show(pH.value)} ${isAcid ? `<= ${rules.acid}` : `>= ${rules.base}`}`,
    total: pH.value,
    limit: isAcid ? rules.acid : rules.base,
    unit: 'pH',
    terms: [],
  };
}
