import { casCheckDigit } from '../notation/cas.ts';
import { misreads, type Reading, reads } from '../quantity/reading.ts';

/** Reads a CAS number and says which check digit would be right. */
export function readCas(written: string): Reading<string> {
  const text = written.trim();
  const match = /^([1-9]\d{1,6}-\d\d)-(\d)$/.exec(text);
  if (/[a-z]/i.test(text))
    return misreads(
      `\`${written}\` is not a CAS number`,
      "leave `cas` out; give `hazards` with `source` from the supplier's sheet, or `unknown` for what it does not say",
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
