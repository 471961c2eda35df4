import { type ConcentrationRange, parseRange, printRange } from './_range.ts';
import { findCode } from './classes.ts';
import type { SpecificLimit } from './limit.ts';
import { readHazard } from './parse-hazard.ts';
import { type Parsed, parsed, unreadable } from './parsed.ts';

/** A concentration from which a supplemental EUH statement is due, as in the limits column of Annex VI. */
export interface SupplementalLimit extends ConcentrationRange {
  /** `EUH031` */
  readonly statement: string;
}

/**
 * Reads a specific concentration limit (CLP Article 10; Annex VI 1.2.3): `Skin Corr. 1B; H314: 2 % ≤ C < 5 %`,
 * `Eye Irrit. 2: C >= 5`. The H-code and `%` are optional, a colon or semicolon stands before the range.
 */
export function parseLimit(text: string): Parsed<SpecificLimit> {
  const parts = splitRange(text);
  if (!parts.ok) return parts;
  const read = readHazard(parts.value.head);
  if (!read.ok) return read;
  const range = parseRange(parts.value.range);
  if (!range.ok) return range;
  const { hazard, written } = read.value;
  return parsed({
    hazardClass: hazard.hazardClass,
    category: hazard.category,
    code: hazard.code,
    statement: written ?? (hazard.effect ? hazard.statement : null),
    ...range.value,
  });
}

/** Reads a limit of a supplemental statement: `EUH031: C >= 5 %`. */
export function parseSupplementalLimit(text: string): Parsed<SupplementalLimit> {
  const parts = splitRange(text);
  if (!parts.ok) return parts;
  if (!/^EUH\d{3}A?$/.test(parts.value.head))
    return unreadable(`"${parts.value.head}" is no EUH code`, 'write EUH031: C >= 5 %');
  const range = parseRange(parts.value.range);
  return range.ok ? parsed({ statement: parts.value.head, ...range.value }) : range;
}

/** A limit as `parseLimit` reads it: `Skin Corr. 1B; H314: 2 % ≤ C < 5 %`. */
export const printLimit = (limit: SpecificLimit): string => {
  const group = findCode(limit.code)?.hazardClass.brackets === 'group' && limit.category !== '';
  const code = group ? `${limit.hazardClass} (${limit.category})` : limit.code;
  return `${code}${limit.statement ? `; ${limit.statement}` : ''}: ${printRange(limit)}`;
};

/** A supplemental limit as `parseSupplementalLimit` reads it. */
export const printSupplementalLimit = (limit: SupplementalLimit): string =>
  `${limit.statement}: ${printRange(limit)}`;

function splitRange(text: string): Parsed<{ head: string; range: string }> {
  const match = /^(.*)[;:]([^;:]*)$/.exec(text.trim());
  if (!match || !/(^|[^A-Za-z.])C([^A-Za-z.]|$)/.test(match[2]!))
    return unreadable(
      `"${text.trim()}" is no concentration limit`,
      'write the class, a semicolon or colon and the range: Skin Sens. 1B; C >= 1 %',
    );
  return parsed({ head: match[1]!.trim(), range: match[2]! });
}
