/**
 * Check digit of an EC number: the six digits before it, each times its place from one, modulo 11; of a remainder of
 * ten, one. From memory, and held against every number of CLP Annex VI Table 3.
 * @param body six digits, hyphens allowed: `215-185`
 */
export function ecCheckDigit(body: string): number {
  const rest =
    [...body.replaceAll('-', '')].reduce((sum, digit, at) => sum + Number(digit) * (at + 1), 0) % 11;
  return rest === 10 ? 1 : rest;
}
