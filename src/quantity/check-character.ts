/**
 * Check character of digits by the pure system MOD 11-2 of ISO/IEC 7064: a digit, or X for ten. It finds every wrong
 * digit and every exchange of two neighbours.
 * @param digits before the check character.
 */
export function mod11Radix2(digits: string): string {
  let sum = 0;
  for (const digit of digits) sum = ((sum + Number(digit)) * 2) % 11;
  const value = (12 - sum) % 11;
  return value === 10 ? 'X' : String(value);
}
