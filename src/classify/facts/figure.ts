import type { InhalationForm } from '../../notation/hazard.ts';
import type { Exact } from '../../quantity/exact.ts';
import type { Because } from './because.ts';

/** The figure that decides, the limit it was held against, and the unit of both; null where a reason has none. */
export function figureOf(because: Because): Figure | null {
  switch (because.kind) {
    case 'sum':
    case 'aerosol':
      return { total: because.total, limit: because.limit, unit: '%' };
    case 'ratios':
      return { total: because.total, limit: 1, unit: 'ratio' };
    case 'ingredients': {
      const [first] = because.comparisons;
      return first ? { total: first.amount.value, limit: first.limit.value, unit: '%' } : null;
    }
    case 'additivity':
    case 'shared-category':
      return { total: because.ateMix, limit: because.limit, unit: unitOf[because.key] };
    case 'ph':
      return { total: because.measured.value.value, limit: because.limit, unit: 'pH' };
    case 'flash-point': {
      const limit = because.upTo?.limit ?? because.above?.limit;
      if (!because.measured || limit === undefined) return null;
      return { total: because.measured.value.value, limit, unit: 'C' };
    }
    case 'oxygen':
      return { total: because.total, limit: because.limit, unit: '%' };
    default:
      return null;
  }
}

/** A constituent that a reason names, with its percent and what it weighs there. */
export interface Named {
  readonly constituent: number;
  readonly amount: Exact;
  /** Weight in a sum, estimate in the additivity formula, else 1. */
  readonly weight: number;
}

/** The constituents on whose concentrations a reason rests; null where it rests on none. */
export function namedIn(because: Because): readonly Named[] | null {
  const plain = ({ constituent, amount }: { constituent: number; amount: Exact }) => ({
    constituent,
    amount,
    weight: 1,
  });
  switch (because.kind) {
    case 'sum':
    case 'ratios':
      return because.terms;
    case 'aerosol':
    case 'oxygen':
      return because.terms.map(plain);
    case 'ingredients':
      return because.comparisons.map(plain);
    case 'additivity':
    case 'shared-category':
      return because.terms.map(({ over, ...term }) => ({ ...term, weight: over.value }));
    case 'elicitors':
      return because.elicitors.map(plain);
    case 'sheet-on-request':
      return because.reasons.flatMap(reason => ('constituent' in reason ? [plain(reason)] : []));
    case 'classes':
      return null;
    default:
      return [];
  }
}

export interface Figure {
  readonly total: number;
  readonly limit: number | null;
  readonly unit: 'ratio' | '%' | 'pH' | 'C' | 'mg/kg' | 'ppmV' | 'mg/L';
}

/** Units of estimates by route and form. */
export const unitOf: Readonly<Record<'oral' | 'dermal' | InhalationForm, 'mg/kg' | 'ppmV' | 'mg/L'>> = {
  oral: 'mg/kg',
  dermal: 'mg/kg',
  gas: 'ppmV',
  vapour: 'mg/L',
  mist: 'mg/L',
};
