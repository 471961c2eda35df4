import type { GtinRegister, NumberUse, RegisterEntry } from '../../barcode/register.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import { counted } from './lengths.ts';

/** A number in the length that people write: without the zeros of fourteen digits, but never under twelve digits. */
const short = (gtin14: string): string =>
  /^0{6}/.test(gtin14) ? gtin14.slice(6) : gtin14.startsWith('0') ? gtin14.slice(1) : gtin14;

const where = ({ product, pack, level }: NumberUse): string =>
  `${product.code} ${product.name}, ${level === 'case' ? `case of ${pack}` : pack}`;

/** The register for a reader, a line each. */
export function registerText({ entries, cases, free }: GtinRegister): string[] {
  const lines = [`${counted(entries.length)} ${entries.length === 1 ? 'number' : 'numbers'} in use`];
  for (const { gtin14, uses } of entries)
    lines.push(`  ${short(gtin14).padEnd(14)}  ${uses.map(where).join('; ')}`);
  if (cases.length > 0) lines.push('', 'Cases');
  for (const { unit, used, next } of cases)
    lines.push(
      `  ${short(unit)}: ${used.length === 0 ? 'no indicator used' : `used ${used.join(', ')}`}; ${next === null ? 'none of 1 to 8 is free' : `next case ${next}`}`,
    );
  lines.push('');
  if (free) {
    lines.push(
      `Prefix ${free.prefix}: ${counted(free.used)} of ${counted(free.capacity)} item numbers used here; numbers used elsewhere are not known`,
    );
    if (free.next.length > 0) lines.push(`  next free: ${free.next.join(', ')}`);
  } else lines.push('Free numbers: give --company-prefix; how long it is cannot be told from the numbers');
  return lines;
}

/** A number on two things is an error. */
export const registerFindings = ({ clashes }: GtinRegister): Diagnostic[] =>
  clashes.flatMap(({ gtin14, uses }: RegisterEntry) =>
    uses.slice(1).map(use => ({
      code: 'gtin-twice',
      severity: 'error' as const,
      message: `GTIN ${short(gtin14)} stands for ${where(use)} and for ${where(uses[0]!)} (${uses[0]!.file})`,
      hint: 'a number belongs to one trade item; give one of them another',
      at: { file: use.file, ...(use.line !== null && { line: use.line }) },
      cite: 'GS1 General Specifications 4.1',
    })),
  );

/** A folder without a product. */
export const folderFinding = (folder: string, isFolder: boolean): Diagnostic => ({
  code: 'no-records',
  severity: 'error',
  message: isFolder ? `there is no product below \`${folder}\`` : `there is no folder \`${folder}\``,
  at: { file: folder },
});

/** A record that cannot be used keeps its numbers out of the register. */
export const notRegistered = (file: string): Diagnostic => ({
  code: 'not-registered',
  severity: 'warning',
  message: `the numbers of ${file} are not in the register`,
  at: { file },
});
