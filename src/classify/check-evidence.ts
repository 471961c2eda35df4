import type { ProductRecord } from '../record/product-record.ts';
import type { Basis } from '../reference/thresholds.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { principleFault } from './bridging.ts';

/** Errors on evidence that is bridged by a principle which the basis does not have for its class, result or form. */
export const checkEvidence = (
  { evidence, form }: Pick<ProductRecord, 'evidence' | 'form'>,
  basis: Basis,
): Diagnostic[] =>
  evidence.flatMap((entry, i): Diagnostic[] => {
    const fault = principleFault(basis, entry, form);
    if (!fault) return [];
    const { text: message, hint, cite } = fault;
    const path = `evidence[${i}].principle`;
    return [{ code: 'bridging-not-allowed', severity: 'error', message, hint, at: entry.at, path, cite }];
  });
