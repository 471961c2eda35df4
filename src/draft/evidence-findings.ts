import { checkEvidence } from '../classify/check-evidence.ts';
import type { ProductRecord } from '../record/product-record.ts';
import type { Basis } from '../reference/thresholds.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { en } from '../words/en/index.ts';

/** Errors on evidence that is bridged by a principle which the basis does not have for its class, result or form. */
export const evidenceFindings = (
  record: Pick<ProductRecord, 'evidence' | 'form'>,
  basis: Basis,
): Diagnostic[] =>
  checkEvidence(record, basis).map(({ fault, cite, at, path }) => ({
    code: 'bridging-not-allowed',
    severity: 'error',
    ...en.bridgingFault(fault),
    at,
    path,
    cite: en.cites([cite]),
  }));
