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

/** Evidence on reserve that speaks of skin or of eye, and does not itself find Category 1. */
const isMildReserve =
  (part: 'skin' | 'eye') =>
  ({ kind, hazardClass, hazard }: Evidence): boolean =>
    kind === 'reserve' &&
    hazardClass.toLowerCase().startsWith(part) &&
    hazard?.hazardClass !== 'Skin Corr.' &&
    hazard?.hazardClass !== 'Eye Dam.';

const nothing: PhFinding = { because: null, setAside: null, warnings: [] };

/**
 * pH 2 or less, or 11.5 or more, gives Category 1. Evidence on reserve that suggests otherwise must be confirmed by other
 * data (A.2.3.1.3, A.3.3.1.2; CLP and UN 3.2.3.1.2, 3.3.3.1.2): alone it lifts nothing, unless the reviewer chooses so
 * (reading `reserve-alone`).
 */
export function extremePh(
  { mixture, basis, scale, take }: Context,
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
  const because = {
    kind: 'ph',
    side: isAcid ? 'acid' : 'base',
    measured: measurementOf(measured),
    limit,
    cites,
  } as const;
  const reserve = mixture.evidence.find(isMildReserve(part));
  if (!reserve) return { because, setAside: null, warnings: [] };
  used.add('reserve-alone');
  const stands = take('reserve-alone') === 'category-1';
  const compared = { pH, operator: isAcid ? '<=' : '>=', limit } as const;
  const warnings: Warning[] = [{ id: 'reserve-to-be-confirmed', part, stands, ...compared, cites }];
  if (stands) return { because, setAside: null, warnings };
  return {
    because: null,
    setAside: { ...compared, method: reserve.method, source: reserve.source },
    warnings,
  };
}
