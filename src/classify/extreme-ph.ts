import type { Evidence } from '../record/product-record.ts';
import type { Context } from './context.ts';
import type { Because } from './facts/because.ts';
import { ofHealth } from './facts/provision.ts';
import type { ReserveSetAside } from './facts/reason-base.ts';
import type { Warning } from './facts/warning.ts';
import { measurementOf } from './measured.ts';
import type { ReadingId } from './readings.ts';

/** What the pH of a mixture says of skin or eye. */
export interface PhFinding {
  /** Category 1 by pH; null where the pH is not extreme, not given, or set aside. */
  readonly because: Extract<Because, { kind: 'ph' }> | null;
  /** What set an extreme pH aside; null where nothing did. */
  readonly setAside: ReserveSetAside | null;
  readonly warnings: readonly Warning[];
}

// One statement serves both skin and eye; one that finds Category 1 sets nothing aside.
const isMildReserve = ({ kind, hazardClass, hazard }: Evidence): boolean =>
  kind === 'reserve' &&
  /^(Skin|Eye)/.test(hazardClass) &&
  hazard?.hazardClass !== 'Skin Corr.' &&
  hazard?.hazardClass !== 'Eye Dam.';

const nothing: PhFinding = { because: null, setAside: null, warnings: [] };

/**
 * pH 2 or less, or 11.5 or more, gives Category 1 unless evidence on reserve says otherwise
 * (A.2.3.1.3, A.3.3.1.2; CLP and UN 3.2.3.1.2, 3.3.3.1.2).
 */
export function extremePh(
  { mixture, basis, scale }: Context,
  rules: { readonly acid: number; readonly base: number; readonly cite: string },
  part: 'skin' | 'eye',
  used: Set<ReadingId>,
): PhFinding {
  const measured = mixture.properties.pH;
  if (!measured) return nothing;
  const { value: pH } = measured;
  const isAcid = scale.compare(pH, rules.acid) <= 0;
  if (!isAcid && !scale.reaches(pH, rules.base)) {
    used.add('moderate-ph');
    return nothing;
  }
  used.add('extreme-ph');
  const cites = [ofHealth(basis, rules.cite)];
  const limit = isAcid ? rules.acid : rules.base;
  const reserve = mixture.evidence.find(isMildReserve);
  if (!reserve)
    return {
      because: {
        kind: 'ph',
        side: isAcid ? 'acid' : 'base',
        measured: measurementOf(measured),
        limit,
        cites,
      },
      setAside: null,
      warnings: [],
    };
  const compared = { pH, operator: isAcid ? '<=' : '>=', limit } as const;
  return {
    because: null,
    setAside: { ...compared, method: reserve.method, source: reserve.source },
    warnings: [{ id: 'reserve-to-be-confirmed', part, ...compared, cites }],
  };
}
