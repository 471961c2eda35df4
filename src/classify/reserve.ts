import type { Evidence } from '../record/product-record.ts';

/** Whether evidence on acid or alkaline reserve speaks of skin or eye; one statement serves both (A.2.3.1.3, A.3.3.1.2). */
export const isReserveEvidence = (evidence: Evidence, hazardClass: 'Skin Corr.' | 'Eye Dam.'): boolean =>
  evidence.kind === 'reserve' &&
  (evidence.hazardClass === hazardClass || /^(Skin|Eye)/.test(evidence.hazardClass));
