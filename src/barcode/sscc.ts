import { gs1CheckDigit } from '../quantity/check-digit.ts';

/** Why no SSCC can be made. */
export type SsccProblem = 'extension' | 'prefix' | 'serial';

/**
 * A serial shipping container code: extension digit, company prefix, serial reference filled up with zeros to sixteen
 * digits together, check digit (GS1 General Specifications 2.2.1, 3.3.1).
 * @param prefix GS1 company prefix, 4 to 12 digits
 * @param serial the number of the unit; used once within a year or longer
 */
export function makeSscc(
  extension: string,
  prefix: string,
  serial: string,
):
  | { readonly sscc: string; readonly problem: null }
  | { readonly sscc: null; readonly problem: SsccProblem } {
  const no = (problem: SsccProblem) => ({ sscc: null, problem });
  if (!/^\d$/.test(extension)) return no('extension');
  if (!/^\d{4,12}$/.test(prefix)) return no('prefix');
  if (!/^\d+$/.test(serial) || prefix.length + serial.length > 16) return no('serial');
  const body = `${extension}${prefix}${serial.padStart(16 - prefix.length, '0')}`;
  return { sscc: `${body}${gs1CheckDigit(body)}`, problem: null };
}
