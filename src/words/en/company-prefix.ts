import type { PrefixFit } from '../../barcode/company-prefix.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';

/** What is to be told of a company prefix beside the numbers of a record. */
export function prefixFindings(fit: PrefixFit, prefix: string): Diagnostic[] {
  if (fit === 'zero-missing')
    return [
      {
        code: 'company-prefix',
        severity: 'error',
        message: `the numbers begin with 0${prefix}: ${prefix} is the U.P.C. company prefix, and an SSCC or a free number made from it would be another company's`,
        hint: `write --company-prefix 0${prefix}`,
        cite: 'GS1 General Specifications 1.4.4',
      },
    ];
  if (fit === 'other')
    return [
      {
        code: 'company-prefix',
        severity: 'warning',
        message: `no number begins with the company prefix ${prefix}`,
        hint: 'compare it with the certificate of GS1',
      },
    ];
  return [];
}
