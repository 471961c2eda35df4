import { stripSeparators } from '../barcode/gtin.ts';
import { makeSscc } from '../barcode/sscc.ts';
import { type CaseSize, PALLET_NAMES, type PalletName } from '../logistics/pallet.ts';
import { gs1CheckDigit } from '../quantity/check-digit.ts';
import type { Exact } from '../quantity/exact.ts';
import { inUnit, readMeasure } from '../quantity/measure.ts';
import type { UnitKind } from '../quantity/units.ts';
import type { ParsedArguments } from './arguments.ts';

/** Stops the call with a message. */
type Refuse = (message: string) => never;

/** What a call of `case` asks, in fixed units. Refuses a value that cannot be read, or two that exclude each other. */
export const caseQuestion = (parsed: ParsedArguments, refuse: Refuse) => ({
  lot: parsed.text('lot'),
  made: parsed.text('made'),
  useBy: parsed.text('use-by'),
  emptyPack: kilograms(parsed, 'bottle-tare', refuse),
  tare: kilograms(parsed, 'case-tare', refuse),
  size: caseSize(parsed, refuse),
  pallet: (parsed.text('pallet-type') ?? PALLET_NAMES[0]!) as PalletName,
  maxHeight: measure(parsed, 'max-height', 'length', 'such as 1500 mm', refuse)?.value ?? null,
  layers: whole(parsed, 'layers', refuse),
  cases: whole(parsed, 'cases', refuse),
  sscc: ssccOf(parsed, refuse),
  limitedQuantity: parsed.flag('limited-quantity'),
  arrows: parsed.flag('arrows'),
});

/** A measure given as an option, in the base unit. */
function measure(
  parsed: ParsedArguments,
  name: string,
  kind: UnitKind,
  example: string,
  refuse: Refuse,
): Exact | null {
  const text = parsed.text(name);
  if (text === null) return null;
  const read = readMeasure(text, kind);
  if (!read.ok || read.value.base.value <= 0) return refuse(`--${name} ${text} is not a ${kind}, ${example}`);
  return read.value.base;
}

function kilograms(parsed: ParsedArguments, name: string, refuse: Refuse): Exact | null {
  const grams = measure(parsed, name, 'mass', 'such as 62 g', refuse);
  return grams && inUnit(grams, 'mass', 'kg');
}

function whole(parsed: ParsedArguments, name: string, refuse: Refuse): number | null {
  const text = parsed.text(name);
  if (text === null) return null;
  if (!/^[1-9]\d{0,5}$/.test(text)) return refuse(`--${name} ${text} is not a whole number from 1`);
  return Number(text);
}

/** `400x300x280mm`, `16 x 12 x 11 in`: length, width and height of the case. */
function caseSize(parsed: ParsedArguments, refuse: Refuse): CaseSize | null {
  const text = parsed.text('size');
  if (text === null) return null;
  const match = /^([\d.]+)\s*[x×]\s*([\d.]+)\s*[x×]\s*([\d.]+)\s*([a-z"]+)$/i.exec(text.trim());
  const sides = match?.slice(1, 4).map(side => readMeasure(`${side} ${match[4]}`, 'length')) ?? [];
  const [length, width, height] = sides.map(read => (read.ok ? read.value.base.value : 0));
  if (!length || !width || !height)
    return refuse(`--size ${text} is not a size; write such as 400x300x280mm`);
  return { length, width, height };
}

/** The number of the pallet: whole, without its check digit, or from prefix and serial. */
function ssccOf(parsed: ParsedArguments, refuse: Refuse): string | null {
  const [given, prefix, serial] = [parsed.text('sscc'), parsed.text('company-prefix'), parsed.text('serial')];
  if (given !== null) {
    if (prefix !== null || serial !== null) refuse('--sscc and --company-prefix exclude each other');
    const digits = stripSeparators(given);
    if (/^\d{17}$/.test(digits)) return `${digits}${gs1CheckDigit(digits)}`;
    return /^\d{18}$/.test(digits) ? digits : refuse(`--sscc ${given} is no SSCC; it has 18 digits`);
  }
  if (prefix === null && serial === null) return null;
  if (prefix === null || serial === null) return refuse('--company-prefix and --serial go together');
  const made = makeSscc(parsed.text('extension') ?? '0', prefix, serial);
  if (made.problem === null) return made.sscc;
  const why = {
    extension: '--extension is one digit',
    prefix: '--company-prefix has 4 to 12 digits',
    serial: '--serial has digits alone, 16 together with the prefix at most',
  };
  return refuse(why[made.problem]);
}
