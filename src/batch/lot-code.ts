import { mod11Radix2 } from '../quantity/check-character.ts';
import { misreads, type Reading, reads } from '../quantity/reading.ts';

/** What a lot code says. */
export interface Lot {
  /** YYYY-MM-DD. */
  readonly made: string;
  /** Number of the batch on its day, from 1. */
  readonly number: number;
}

/** Batches of a day that the code has room for. */
export const MOST_BATCHES = 99;

/**
 * The lot code of a batch, as the coder prints it: two digits each of year, month and day, two of the number of the
 * batch on its day, and a check character (ISO/IEC 7064, MOD 11-2). Digits and X alone, so that no letter is taken for
 * a digit; nine characters, within the 20 of AI (10).
 * @param made YYYY-MM-DD, in this century
 * @param number 1 to 99
 * @throws RangeError on a day or number that the code has no room for
 */
export function lotCode({ made, number }: Lot): string {
  if (!/^20\d\d-\d\d-\d\d$/.test(made)) throw new RangeError(`no lot code for ${made}`);
  if (!Number.isInteger(number) || number < 1 || number > MOST_BATCHES)
    throw new RangeError(`no lot code for batch ${number}`);
  const digits = `${made.slice(2).replaceAll('-', '')}${String(number).padStart(2, '0')}`;
  return `${digits}${mod11Radix2(digits)}`;
}

/** Whether a text has the form of the lot code. */
export const looksLikeLotCode = (text: string): boolean => /^\d{8}[\dX]$/.test(bare(text));

/** Decodes a lot code; blanks and hyphens between its characters are passed over. */
export function readLotCode(written: string): Reading<Lot> {
  const text = bare(written);
  if (!/^\d{8}[\dX]$/.test(text))
    return misreads(
      `\`${written}\` is no lot code`,
      'a lot code has eight digits and a check character, 0 to 9 or X',
    );
  const digits = text.slice(0, -1);
  const right = mod11Radix2(digits);
  if (right !== text.at(-1))
    return misreads(
      `lot code \`${written}\` has a wrong check character`,
      `compare every digit; if the others are right, it would end in ${right}: ${digits}${right}`,
      'check-digit',
    );
  const made = `20${digits.slice(0, 2)}-${digits.slice(2, 4)}-${digits.slice(4, 6)}`;
  const day = new Date(`${made}T00:00:00Z`);
  if (Number.isNaN(day.valueOf()) || !day.toISOString().startsWith(made))
    return misreads(`lot code \`${written}\` names ${made}, which is no day`);
  const number = Number(digits.slice(6));
  if (number === 0) return misreads(`lot code \`${written}\` names batch 0`, 'batches are counted from 01');
  return reads({ made, number });
}

const bare = (text: string): string => text.replace(/[\s-]/g, '').toUpperCase();
