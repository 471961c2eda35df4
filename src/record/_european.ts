import { ecCheckDigit } from '../notation/ec-number.ts';
import { isUfiText, printUfi, ufiCharacters, ufiCheckCharacter } from '../notation/ufi.ts';
import { misreads, type Reading, reads } from '../quantity/reading.ts';
import { leaf } from './_leaf.ts';

/** Reads a unique formula identifier and says which check character would be right. */
export function readUfi(written: string): Reading<string> {
  const text = ufiCharacters(written);
  if (!isUfiText(text))
    return misreads(
      `\`${written}\` is not a unique formula identifier`,
      'write its 16 characters as in N1QV-R02N-J00M-WQD5: digits and capital letters without B, I, L, O and Z',
    );
  const rest = text.slice(1);
  const right = ufiCheckCharacter(rest);
  if (right === text[0]) return reads(printUfi(text));
  return misreads(
    `UFI \`${printUfi(text)}\` has a wrong check character`,
    `compare every character; if the others are right, it would be ${printUfi(right + rest)}`,
    'check-digit',
  );
}

/** Reads an EC number and says which check digit would be right. */
export function readEc(written: string): Reading<string> {
  const text = written.trim();
  const match = /^(\d{3}-\d{3})-(\d)$/u.exec(text);
  if (!match)
    return misreads(
      `\`${written}\` is not an EC number`,
      'write it as in 215-185-5: three digits, a hyphen, three digits, a hyphen, one digit',
    );
  const right = ecCheckDigit(match[1]!);
  if (right === Number(match[2])) return reads(text);
  return misreads(
    `EC number \`${text}\` has a digit wrong`,
    `with these digits it would end in ${right}: ${match[1]}-${right}; compare it with the supplier's sheet`,
    'check-digit',
  );
}

/** Reads a registration number; its last four digits, which name the registrant, may be left out. */
export function readRegistration(written: string): Reading<string> {
  const text = written.trim().toUpperCase();
  if (/^\d{2}-\d{10}-\d{2}(?:-\d{4})?$/u.test(text)) return reads(text);
  return misreads(
    `\`${written}\` is not a REACH registration number`,
    'write it as in 01-2119457892-27-0000; the last four digits may be left out',
  );
}

export const ufiLeaf = leaf(
  readUfi,
  'a unique formula identifier',
  'N1QV-R02N-J00M-WQD5',
  'Unique formula identifier of the mixture (UFI; Regulation (EC) No 1272/2008, Annex VIII)',
);
export const ecLeaf = leaf(
  readEc,
  'an EC number',
  '215-185-5',
  'EC number, where CLP Annex VI has none or another',
);
export const registrationLeaf = leaf(
  readRegistration,
  'a REACH registration number',
  '01-2119457892-27',
  'Section 3: REACH registration number',
);
