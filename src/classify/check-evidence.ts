import type { ProductRecord } from '../record/product-record.ts';
import type { Basis } from '../reference/thresholds.ts';
import type { Position } from '../report/diagnostic.ts';
import { type CitedFault, principleFault } from './bridging.ts';

/** Evidence that is bridged by a principle which the basis does not have for its class, result or form. */
export interface MisusedPrinciple extends CitedFault {
  readonly at: Position;
  /** `evidence[1].principle` */
  readonly path: string;
}

/** Every use of a bridging principle that the law does not know. */
export const checkEvidence = (
  { evidence, form }: Pick<ProductRecord, 'evidence' | 'form'>,
  basis: Basis,
): MisusedPrinciple[] =>
  evidence.flatMap((entry, i): MisusedPrinciple[] => {
    const found = principleFault(basis, entry, form);
    return found ? [{ ...found, at: entry.at, path: `evidence[${i}].principle` }] : [];
  });
