import data from '../../hazard-data/label-purposes.json' with { type: 'json' };
import type { PrecautionaryStatement } from './label-elements.ts';

/** A label for one kind of buyer. */
export type SupplyPurpose = 'us-workplace' | 'us-consumer' | 'eu-supply';

/** What a label is for: a kind of buyer, or a tank and other containers that stay in the shop. */
export type LabelPurpose = SupplyPurpose | 'tank';

/** Who buys the product and where; null where the record does not say. */
export interface Sale {
  readonly users: readonly ('workplace' | 'consumers')[];
  readonly markets: readonly ('us' | 'eu')[];
}

/** Whether a label is due, the ground as an id of `hazard-data/label-purposes.json`, and its paragraphs. */
export interface PurposeDecision {
  readonly purpose: SupplyPurpose;
  readonly outcome: 'due' | 'not-due' | 'open';
  readonly ground: string;
  readonly cites: readonly string[];
}

/** A statement that speaks of plant and workplace and may fall away on a label for consumers. */
export interface WorkplaceStatement {
  readonly code: string;
  readonly ground: string;
  readonly cite: string;
}

interface Rule {
  readonly purpose: string;
  readonly market: string;
  readonly users: readonly string[];
  readonly outcome: string;
  readonly ground: string;
  readonly cites: readonly string[];
}

const rules: readonly Rule[] = data.purposes;

/**
 * Which labels a product needs (29 CFR 1910.1200(b)(5)(v) and (b)(6)(ix); 16 CFR 1500.3(b)(14); CLP Article 17).
 * Where the record does not say who buys it and where, every label is open.
 * @param hazardous whether any hazard is classified
 */
export function labelPurposes(sale: Sale | null, hazardous: boolean): PurposeDecision[] {
  if (!sale) return data.open.map(each => ({ ...each, outcome: 'open' }) as PurposeDecision);
  const kinds = (['workplace', 'consumers'] as const).filter(kind => sale.users.includes(kind)).join('+');
  return rules
    .filter(({ users }) => users.includes(kinds))
    .map(({ purpose, market, outcome, ground, cites }): PurposeDecision => {
      const of = { purpose: purpose as SupplyPurpose, cites };
      if (!sale.markets.includes(market as 'us' | 'eu'))
        return { ...of, outcome: 'not-due', ground: 'market' };
      // The hazards of the consumer law rest on tests of its own: no class here does not settle them.
      if (outcome === 'due' && !hazardous)
        return purpose === 'us-consumer'
          ? { ...of, outcome: 'open', ground: 'tests-decide' }
          : { ...of, outcome: 'not-due', ground: 'no-hazard' };
      return { ...of, outcome: outcome as PurposeDecision['outcome'], ground };
    });
}

/** Statements of a label that speak of plant and workplace, with the ground on which consumers are spared them. */
export const workplaceStatements = (
  statements: readonly Pick<PrecautionaryStatement, 'code'>[],
): WorkplaceStatement[] =>
  statements.flatMap(({ code }) => {
    const found = data.workplaceStatements.find(each => each.codes.includes(code));
    return found ? [{ code, ground: found.ground, cite: found.cite }] : [];
  });
