import { casCheckDigit } from '../notation/cas.ts';
import { misreads, type Reading, reads } from '../quantity/reading.ts';

/** What sheets print in place of a number. */
const WITHHELD =
  /^(?:proprietary|trade[ -]?secret|confidential|withheld|secret|mixture|blend|n\/?a|none|unknown|not (?:available|applicable|assigned|disclosed|known)|-+)\b|^(?:cbi|-+|n\/a)$/i;

/** Reads a CAS number and says which check digit would be right. */
export function readCas(written: string): Reading<string> {
  const text = written.trim();
  const match = /^([1-9]\d{1,6}-\d\d)-(\d)$/.exec(text);
  if (!match && WITHHELD.test(text))
    return misreads(
      `\`${written}\` is not a CAS number`,
      'leave `cas` out; give `hazards` with the `source` that states them, and `trade-secret` where the number is known to you and withheld',
    );
  if (!match)
    return misreads(
      `\`${written}\` is not a CAS number`,
      'write it as in 1310-73-2: digits, a hyphen, two digits, a hyphen, one digit',
    );
  const right = casCheckDigit(match[1]!);
  if (right === Number(match[2])) return reads(text);
  return misreads(
    `CAS number \`${text}\` has a digit wrong`,
    `with these digits it would end in ${right}: ${match[1]}-${right}; compare it with the supplier's sheet`,
    'check-digit',
  );
}
