import type { FormulaLine } from '../record/product-record.ts';
import type { Diagnostic } from '../report/diagnostic.ts';

/** Name by which a line is spoken of. */
export const lineName = (line: FormulaLine): string =>
  line.kind === 'substance' ? line.name : line.material.name;

/** An error about one line of a formula. */
export const lineError = (line: FormulaLine, code: string, message: string, hint?: string): Diagnostic => ({
  code,
  severity: 'error',
  message,
  hint,
  at: line.at,
  path: line.path,
  excerpt: line.excerpt,
});
