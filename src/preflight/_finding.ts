import type { Diagnostic, Severity } from '../report/diagnostic.ts';

/** A finding about a finished file. */
export const finding = (
  code: string,
  message: string,
  cite: string,
  severity: Severity = 'error',
): Diagnostic => ({ code, severity, message, cite });
