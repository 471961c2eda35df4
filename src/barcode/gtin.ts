import { gs1CheckDigit } from '../quantity/check-digit.ts';
import { type PrefixNote, prefixNotes } from './gs1-prefix.ts';
import type { SymbolName } from './spec.ts';
import { compressToUpcE, expandUpcE } from './upc-e.ts';

export type NumberKind = 'GTIN-8' | 'GTIN-12' | 'GTIN-13' | 'GTIN-14' | 'SSCC-18' | 'UPC-E';
export type GtinKind = 'GTIN-8' | 'GTIN-12' | 'GTIN-13' | 'GTIN-14';

/** The same trade item in every length that can hold it; null where the number does not fit. */
export type GtinForms = Readonly<Record<GtinKind, string | null>>;

/** Two neighbouring digits that, changed over, would make the check digit right. */
export interface Transposition {
  /** Place of the first of the two, counted from 1. */
  readonly place: number;
  readonly digits: string;
}

/** A number understood as one kind of GS1 key. */
export interface NumberReading {
  readonly kind: NumberKind;
  /** As given, without spaces and hyphens; UPC-E with its leading zero. */
  readonly given: string;
  /** With the right check digit. */
  readonly completed: string;
  readonly checkDigit: { readonly given: string | null; readonly right: string };
  /** The check digit is right, or there was none and it was computed. */
  readonly valid: boolean;
  readonly transpositions: readonly Transposition[];
  /** Null for an SSCC. */
  readonly forms: GtinForms | null;
  /** Eight digits of the UPC-E symbol, where the zeros allow it. */
  readonly upcE: string | null;
  /** Symbols that may carry the number. */
  readonly symbols: readonly SymbolName[];
  /** Indicator digit of a GTIN-14 (1-8 a grouping, 9 variable measure). */
  readonly indicator: number | null;
  /** GTIN of the item inside a grouping, as a GTIN-14 with indicator 1 to 8 tells it. */
  readonly contained: string | null;
  readonly prefixes: readonly PrefixNote[];
}

export type NumberProblem = 'empty' | 'not-digits' | 'length' | 'check-digit';

/** What is known of one number. */
export interface NumberReport {
  readonly input: string;
  readonly problem: NumberProblem | null;
  /** How the number is understood; more than one where its length allows it. */
  readonly readings: readonly NumberReading[];
  /** What it would be if the check digit were still missing. */
  readonly otherwise: readonly NumberReading[];
}

const COMPLETE_KINDS: Readonly<Record<number, NumberKind>> = {
  8: 'GTIN-8',
  12: 'GTIN-12',
  13: 'GTIN-13',
  14: 'GTIN-14',
  18: 'SSCC-18',
};

/** The number without the spaces and hyphens that people write between its groups. */
export const stripSeparators = (input: string): string => input.trim().replace(/(?<=\d)[\s-]+(?=\d)/g, '');

/**
 * Examines a GTIN, SSCC or UPC-E number (GS1 General Specifications 2, 3.2, 7.9, 7.10).
 * @param complete the check digit is missing and to be computed, where the length leaves it open
 */
export function examineNumber(input: string, { complete = false } = {}): NumberReport {
  const digits = stripSeparators(input);
  const report = (
    problem: NumberProblem | null,
    readings: NumberReading[] = [],
    otherwise: NumberReading[] = [],
  ) => ({
    input,
    problem,
    readings,
    otherwise,
  });
  if (digits === '') return report('empty');
  if (!/^\d+$/.test(digits)) return report('not-digits');
  const whole = complete ? [] : wholeReadings(digits);
  const missing = missingReadings(digits);
  if (whole.length === 0) return missing.length > 0 ? report(null, missing) : report('length');
  const valid = whole.filter(reading => reading.valid);
  // With indicator 0 a GTIN-14 is the GTIN-13 again.
  const otherwise = missing.filter(({ indicator }) => indicator !== 0);
  return valid.length > 0 ? report(null, valid, otherwise) : report('check-digit', whole, otherwise);
}

/** Readings in which the last digit is the check digit. */
function wholeReadings(digits: string): NumberReading[] {
  const kind = COMPLETE_KINDS[digits.length];
  if (!kind) return [];
  const readings = [read(kind, digits.slice(0, -1), digits.at(-1)!)];
  if (kind === 'GTIN-8' && digits.startsWith('0'))
    readings.push(read('UPC-E', digits.slice(0, 7), digits[7]!));
  return readings;
}

/** Readings in which the check digit is missing. */
function missingReadings(digits: string): NumberReading[] {
  const kind = COMPLETE_KINDS[digits.length + 1];
  const readings = kind ? [read(kind, digits, null)] : [];
  if (digits.length === 7 && digits.startsWith('0')) readings.push(read('UPC-E', digits, null));
  if (digits.length === 6) readings.push(read('UPC-E', `0${digits}`, null));
  return readings;
}

function read(kind: NumberKind, body: string, given: string | null): NumberReading {
  const expanded = kind === 'UPC-E' ? expandUpcE(body.slice(1)) : body;
  const right = String(gs1CheckDigit(expanded));
  const valid = given === null || given === right;
  const forms = kind === 'SSCC-18' ? null : gtinForms(expanded + right);
  const indicator = kind === 'GTIN-14' ? Number(body[0]) : null;
  const upcE = forms?.['GTIN-12'] ? upcEOf(forms['GTIN-12']) : null;
  return {
    kind,
    given: body + (given ?? ''),
    completed: body + right,
    checkDigit: { given, right },
    valid,
    transpositions: valid ? [] : transpositions(body + given, kind),
    forms,
    upcE,
    symbols: symbolsFor(kind, forms, upcE),
    indicator,
    contained: indicator && indicator <= 8 ? shortest(body.slice(1) + gs1CheckDigit(body.slice(1))) : null,
    prefixes: forms ? prefixesOf(forms) : [],
  };
}

const upcEOf = (gtin12: string): string | null => {
  const six = compressToUpcE(gtin12);
  return six === null ? null : `0${six}${gtin12.at(-1)}`;
};

/** The same GTIN filled up with zeros or freed of them (GS1 General Specifications 3.3.2). */
function gtinForms(digits: string): GtinForms {
  const fourteen = digits.padStart(14, '0');
  const cut = (length: number) =>
    fourteen.startsWith('0'.repeat(14 - length)) ? fourteen.slice(14 - length) : null;
  return { 'GTIN-8': cut(8), 'GTIN-12': cut(12), 'GTIN-13': cut(13), 'GTIN-14': fourteen };
}

const shortest = (gtin: string): string => {
  const forms = gtinForms(gtin);
  return (forms['GTIN-8'] ?? forms['GTIN-12'] ?? forms['GTIN-13'] ?? forms['GTIN-14'])!;
};

function symbolsFor(kind: NumberKind, forms: GtinForms | null, upcE: string | null): SymbolName[] {
  if (!forms) return ['GS1-128'];
  if (kind === 'UPC-E') return ['UPC-E', 'UPC-A'];
  if (forms['GTIN-8']) return ['EAN-8'];
  if (forms['GTIN-12']) return upcE ? ['UPC-A', 'UPC-E'] : ['UPC-A'];
  return forms['GTIN-13'] ? ['EAN-13'] : ['ITF-14', 'GS1-128'];
}

function prefixesOf(forms: GtinForms): readonly PrefixNote[] {
  if (forms['GTIN-8']) return prefixNotes('GTIN-8', forms['GTIN-8']);
  return prefixNotes('GTIN-13', forms['GTIN-13'] ?? forms['GTIN-14']!.slice(1));
}

/** Changing over two neighbours is the commonest slip that a check digit catches; those that would explain it. */
function transpositions(digits: string, kind: NumberKind): Transposition[] {
  const found: Transposition[] = [];
  for (let at = 0; at + 1 < digits.length; at += 1) {
    const [left, right] = [digits[at]!, digits[at + 1]!];
    if (left === right || (kind === 'UPC-E' && at === 0)) continue;
    const swapped = digits.slice(0, at) + right + left + digits.slice(at + 2);
    if (hasRightCheckDigit(swapped, kind)) found.push({ place: at + 1, digits: swapped });
  }
  return found;
}

function hasRightCheckDigit(digits: string, kind: NumberKind): boolean {
  const body = kind === 'UPC-E' ? expandUpcE(digits.slice(1, 7)) : digits.slice(0, -1);
  return String(gs1CheckDigit(body)) === digits.at(-1);
}

/**
 * GTIN-14 of a grouping of a trade item.
 * @param indicator 1 to 8, or 9 for variable measure
 */
export function groupingGtin(gtin: string, indicator: number): string {
  const body = `${indicator}${gtin.padStart(14, '0').slice(1, -1)}`;
  return body + gs1CheckDigit(body);
}

/** The symbol that a GTIN with a right check digit takes on a label, with the digits to encode. */
export function labelSymbol(gtin: string): { readonly name: SymbolName; readonly digits: string } {
  const forms = gtinForms(gtin);
  if (forms['GTIN-8']) return { name: 'EAN-8', digits: forms['GTIN-8'] };
  if (forms['GTIN-12']) return { name: 'UPC-A', digits: forms['GTIN-12'] };
  if (forms['GTIN-13']) return { name: 'EAN-13', digits: forms['GTIN-13'] };
  return { name: 'ITF-14', digits: forms['GTIN-14']! };
}

/**
 * The symbol that is asked for with the digits to encode, or the usual one of the GTIN; null where the GTIN does not
 * go into the symbol (GS1 General Specifications 5.2: a GTIN-12 fits EAN-13 with a zero before it, and UPC-E where its
 * zeros allow that).
 */
export function packSymbol(
  gtin: string,
  asked: Extract<SymbolName, 'UPC-A' | 'UPC-E' | 'EAN-13' | 'EAN-8'> | null,
): { readonly name: SymbolName; readonly digits: string } | null {
  if (asked === null) return labelSymbol(gtin);
  const forms = gtinForms(gtin);
  const kind = { 'UPC-A': 'GTIN-12', 'UPC-E': 'GTIN-12', 'EAN-13': 'GTIN-13', 'EAN-8': 'GTIN-8' } as const;
  // A GTIN-8 stays one: filled up with zeros it is another symbol, and no scanner expects it.
  const found = asked !== 'EAN-8' && forms['GTIN-8'] ? null : forms[kind[asked]];
  const digits = found && asked === 'UPC-E' ? upcEOf(found) : found;
  return digits === null ? null : { name: asked, digits };
}
