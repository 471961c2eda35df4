/** Digits of a unique formula identifier, by their value (European Chemicals Agency, UFI Developers Manual). */
const DIGITS = '0123456789ACDEFGHJKMNPQRSTUVWXY';

/** The characters of a unique formula identifier without prefix, hyphens and spaces. */
export const ufiCharacters = (written: string): string =>
  written
    .trim()
    .toUpperCase()
    .replace(/^UFI\s*:\s*/u, '')
    .replace(/[\s-]/gu, '');

/** Whether every character is one that an identifier can have. */
export const isUfiText = (characters: string): boolean =>
  characters.length === 16 && [...characters].every(each => DIGITS.includes(each));

/**
 * The check character of an identifier, which is its first: the values of the sixteen characters, each times its
 * place from one, come to a multiple of 31 (UFI Developers Manual, checksum; read from memory and held against
 * identifiers that were published).
 * @param rest the fifteen characters after the check character
 */
export function ufiCheckCharacter(rest: string): string {
  const sum = [...rest].reduce((total, each, at) => total + DIGITS.indexOf(each) * (at + 2), 0);
  return DIGITS[(DIGITS.length - (sum % DIGITS.length)) % DIGITS.length]!;
}

/** `N1QV-R02N-J00M-WQD5`: four groups of four. */
export const printUfi = (characters: string): string => characters.match(/.{4}/gu)!.join('-');
