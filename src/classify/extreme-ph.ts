import { compare, reaches, show } from '../quantity/sum.ts';
import type { Evidence } from '../record/product-record.ts';
import type { Because, Warning } from './classification.ts';
import { type Context, citeHealth } from './context.ts';
import { withSource } from './measured.ts';
import type { ReadingId } from './readings.ts';

/** What the pH of a mixture says of skin or eye. */
export interface PhFinding {
  /** Category 1 by pH; null where the pH is not extreme, not given, or set aside. */
  readonly because: Because | null;
  /** What set an extreme pH aside, to stand behind the working of the result; empty where nothing did. */
  readonly setAside: string;
  readonly warnings: readonly Warning[];
}

// One statement serves both skin and eye; one that finds Category 1 sets nothing aside.
const isMildReserve = ({ kind, hazardClass, hazard }: Evidence): boolean =>
  kind === 'reserve' &&
  /^(Skin|Eye)/.test(hazardClass) &&
  hazard?.hazardClass !== 'Skin Corr.' &&
  hazard?.hazardClass !== 'Eye Dam.';

const nothing: PhFinding = { because: null, setAside: '', warnings: [] };

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
): PhFinding {
  const measured = mixture.properties.pH;
  if (!measured) return nothing;
  const { value: pH } = measured;
  const isAcid = compare(pH, rules.acid) <= 0;
  if (!isAcid && !reaches(pH, rules.base)) {
    used.add('moderate-ph');
    return nothing;
  }
  used.add('extreme-ph');
  const cite = citeHealth(basis, rules.cite);
  const limit = isAcid ? rules.acid : rules.base;
  const compared = `${isAcid ? '<=' : '>='} ${show(limit)}`;
  const reserve = mixture.evidence.find(isMildReserve);
  if (reserve) {
    const extreme = `pH ${show(pH.value)} ${compared}`;
    return {
      because: null,
      setAside: `; ${extreme} is set aside by evidence on acid or alkaline reserve (${reserve.method}; ${reserve.source})`,
      warnings: [
        {
          id: 'reserve-to-be-confirmed',
          text: `${extreme} is set aside for ${hazardClass === 'Skin Corr.' ? 'skin' : 'eyes'} by evidence on reserve alone; other data must confirm that the mixture does no such damage`,
          cite,
        },
      ],
    };
  }
  return {
    because: {
      rule: isAcid ? 'extreme pH (acid)' : 'extreme pH (base)',
      cite,
      working: `${withSource(`pH ${show(pH.value)}`, measured)} ${compared}`,
      total: pH.value,
      limit,
      unit: 'pH',
      terms: [],
    },
    setAside: '',
    warnings: [],
  };
}
