import { misreads, type Reading, reads } from './reading.ts';

/**
 * Check digit of a GS1 key (GS1 General Specifications, 7.9.1): weights 3 and 1 alternate from the right,
 * the digit completes the sum to a multiple of ten.
 * @param body the digits before the check digit.
 */
export function gs1CheckDigit(body: string): number {
  let sum = 0;
  for (let i = 0; i < body.length; i++) sum += Number(body[body.length - 1 - i]) * (i % 2 === 0 ? 3 : 1);
  return (10 - (sum % 10)) % 10;
}

/** Reads a GTIN-8, -12, -13 or -14. */
export function readGtin(written: string): Reading<string> {
  const text = written.trim();
  if (/^[\d\s-]+$/.test(text) && /[\s-]/.test(text))
    return misreads(
      `GTIN \`${written}\` has spaces or hyphens`,
      `write the digits alone: "${text.replace(/[\s-]/g, '')}"`,
    );
  if (!/^\d+$/.test(text)) return misreads(`\`${written}\` is not a GTIN`, 'a GTIN has digits alone');
  if (![8, 12, 13, 14].includes(text.length))
    return misreads(`GTIN \`${text}\` has ${text.length} digits`, 'a GTIN has 8, 12, 13 or 14 digits');
  const body = text.slice(0, -1);
  const right = gs1CheckDigit(body);
  if (right !== Number(text.at(-1)))
    return misreads(
      `GTIN \`${text}\` has a wrong check digit`,
      `compare every digit; if the others are right, it would end in ${right}: "${body}${right}"`,
      'check-digit',
    );
  return reads(text);
}
