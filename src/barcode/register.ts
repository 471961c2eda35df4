import { gs1CheckDigit } from '../quantity/check-digit.ts';
import { groupingGtin } from './gtin.ts';

/** A number as one record uses it. */
export interface NumberUse {
  /** As written, with a right check digit. */
  readonly gtin: string;
  readonly level: 'pack' | 'case';
  readonly product: { readonly name: string; readonly code: string };
  readonly pack: string;
  readonly file: string;
  readonly line: number | null;
}

/** A number with everything that uses it. */
export interface RegisterEntry {
  /** In fourteen digits, so that the same number in other lengths is the same. */
  readonly gtin14: string;
  readonly uses: readonly NumberUse[];
}

/** Case numbers of one pack. */
export interface CaseNumbers {
  readonly unit: string;
  /** Indicators that some case of the folder uses. */
  readonly used: readonly number[];
  /** The next free number of a case, or null where all indicators 1 to 8 are used. */
  readonly next: string | null;
}

/** Item numbers below a company prefix. */
export interface FreeNumbers {
  readonly prefix: string;
  /** How many item references the prefix has, and how many of them are used. */
  readonly capacity: number;
  readonly used: number;
  /** The next free ones, as GTIN-13; those with a leading zero are GTIN-12. */
  readonly next: readonly string[];
}

/** The numbers of a folder of records. */
export interface GtinRegister {
  readonly entries: readonly RegisterEntry[];
  /** Numbers that more than one pack, or a pack and a case, use. */
  readonly clashes: readonly RegisterEntry[];
  readonly cases: readonly CaseNumbers[];
  /** Null where no company prefix was given: it cannot be told from the numbers. */
  readonly free: FreeNumbers | null;
}

const SHOWN = 5;

/**
 * The register of all numbers of a folder: used ones, clashes, free ones and numbers for cases (a GTIN belongs to one
 * trade item: GS1 General Specifications 4.1, GTIN management).
 * @param prefix GS1 company prefix of 4 to 12 digits, as of a GTIN-13 (a U.P.C. company prefix with a zero before it)
 */
export function gtinRegister(uses: readonly NumberUse[], prefix: string | null): GtinRegister {
  const byNumber = new Map<string, NumberUse[]>();
  for (const use of uses) {
    const gtin14 = use.gtin.padStart(14, '0');
    const found = byNumber.get(gtin14);
    if (found) found.push(use);
    else byNumber.set(gtin14, [use]);
  }
  const entries = [...byNumber]
    .map(([gtin14, found]) => ({ gtin14, uses: found }))
    .sort((a, b) => (a.gtin14.slice(1) + a.gtin14[0]! < b.gtin14.slice(1) + b.gtin14[0]! ? -1 : 1));
  const units = entries.filter(({ gtin14 }) => gtin14[0] === '0');
  return {
    entries,
    clashes: entries.filter(entry => new Set(entry.uses.map(place)).size > 1),
    cases: units
      .filter(({ uses: found }) => found.some(({ level }) => level === 'pack'))
      .map(({ gtin14 }) => caseNumbers(gtin14, byNumber)),
    free: prefix === null ? null : freeNumbers(prefix, units),
  };
}

const place = ({ file, pack, level }: NumberUse): string => `${file}\n${pack}\n${level}`;

function caseNumbers(unit: string, known: ReadonlyMap<string, unknown>): CaseNumbers {
  const indicators = [1, 2, 3, 4, 5, 6, 7, 8];
  const used = indicators.filter(indicator => known.has(groupingGtin(unit, indicator)));
  const next = indicators.find(indicator => !used.includes(indicator));
  return { unit, used, next: next === undefined ? null : groupingGtin(unit, next) };
}

function freeNumbers(prefix: string, units: readonly RegisterEntry[]): FreeNumbers {
  const digits = 12 - prefix.length;
  const capacity = 10 ** digits;
  const used = new Set(
    units
      .map(({ gtin14 }) => gtin14.slice(1, -1))
      .filter(body => body.startsWith(prefix))
      .map(body => Number(body.slice(prefix.length) || '0')),
  );
  const next: string[] = [];
  for (let item = 0; item < capacity && next.length < SHOWN; item += 1) {
    if (used.has(item)) continue;
    const body = `${prefix}${digits === 0 ? '' : String(item).padStart(digits, '0')}`;
    next.push(`${body}${gs1CheckDigit(body)}`);
  }
  return { prefix, capacity, used: used.size, next };
}
