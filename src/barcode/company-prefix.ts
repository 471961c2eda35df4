/** How a company prefix goes with the numbers that a company uses. */
export type PrefixFit = 'fits' | 'zero-missing' | 'other' | 'nothing-to-compare';

/**
 * Whether numbers begin with a company prefix. A U.P.C. company prefix lacks the zero that its GS1 company prefix
 * has (GS1 General Specifications 1.4.4): `614141` is `0614141`; without it an SSCC would be another company's.
 * @param gtins 8 to 14 digits, with right check digits; those of eight digits have no company prefix in them
 */
export function prefixFit(prefix: string, gtins: readonly string[]): PrefixFit {
  const bodies = gtins
    .filter(gtin => !/^0{6}/.test(gtin.padStart(14, '0')))
    .map(gtin => gtin.padStart(14, '0').slice(1));
  if (bodies.length === 0) return 'nothing-to-compare';
  if (bodies.some(body => body.startsWith(prefix))) return 'fits';
  return bodies.some(body => body.startsWith(`0${prefix}`)) ? 'zero-missing' : 'other';
}
