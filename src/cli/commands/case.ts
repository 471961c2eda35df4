import { prefixFit } from '../../barcode/company-prefix.ts';
import { stripSeparators } from '../../barcode/gtin.ts';
import { makeSscc } from '../../barcode/sscc.ts';
import { draftCase } from '../../draft/draft-case.ts';
import { PRINTER_NAMES, type PrinterName } from '../../layout/case/thermal-stock.ts';
import { caseFacts } from '../../logistics/case-facts.ts';
import { type CaseSize, PALLET_NAMES, type PalletName } from '../../logistics/pallet.ts';
import { gs1CheckDigit } from '../../quantity/check-digit.ts';
import type { Exact } from '../../quantity/exact.ts';
import { inUnit, readMeasure } from '../../quantity/measure.ts';
import type { UnitKind } from '../../quantity/units.ts';
import { hasErrors } from '../../report/diagnostic.ts';
import { loadFonts } from '../../text/font-library.ts';
import { caseText } from '../../words/en/case.ts';
import { prefixFindings } from '../../words/en/company-prefix.ts';
import { type CommandUsage, type ParsedArguments, parseArguments, UsageError } from '../arguments.ts';
import { choosePack } from '../choose-pack.ts';
import { outputFolder, report } from '../draft.ts';
import { exit, type Io } from '../io.ts';
import { open } from '../open.ts';
import { writeFiles } from '../write-files.ts';

const usage: CommandUsage = {
  usage: `case RECORD [--pack ID] [--lot LOT] [--made YYYY-MM-DD] [--use-by YYYY-MM-DD] [--printer ${PRINTER_NAMES.join('|')}] [--bottle-tare MASS] [--case-tare MASS] [--limited-quantity] [--arrows] [--size LxWxH] [--pallet] [--pallet-type ${PALLET_NAMES.join('|')}] [--max-height LENGTH] [--layers N] [--cases N] [--sscc NUMBER | --company-prefix P --serial N [--extension D]] [--out DIR] [--json] [--as-of YYYY-MM-DD]`,
  options: {
    pack: 'text',
    lot: 'text',
    made: 'date',
    'use-by': 'date',
    printer: PRINTER_NAMES,
    'bottle-tare': 'text',
    'case-tare': 'text',
    'limited-quantity': 'flag',
    arrows: 'flag',
    size: 'text',
    pallet: 'flag',
    'pallet-type': PALLET_NAMES,
    'max-height': 'text',
    layers: 'text',
    cases: 'text',
    sscc: 'text',
    'company-prefix': 'text',
    serial: 'text',
    extension: 'text',
    out: 'text',
    json: 'flag',
    'as-of': 'date',
  },
  positional: [1, 1],
};

const refuse = (message: string): never => {
  throw new UsageError(`${message}\nusage: labelwright ${usage.usage}`);
};

/** Drafts case and pallet labels for a roll printer. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, usage);
  const date = parsed.text('as-of') ?? io.today;
  const batch = { lot: parsed.text('lot'), made: parsed.text('made'), useBy: parsed.text('use-by') };
  const palletType = parsed.text('pallet-type') as PalletName | null;
  const question = {
    ...batch,
    emptyPack: kilograms(parsed, 'bottle-tare'),
    tare: kilograms(parsed, 'case-tare'),
    size: caseSize(parsed),
    pallet: palletType ?? PALLET_NAMES[0]!,
    maxHeight: measure(parsed, 'max-height', 'length', 'such as 1500 mm')?.value ?? null,
    layers: whole(parsed, 'layers'),
    cases: whole(parsed, 'cases'),
    sscc: ssccOf(parsed),
    limitedQuantity: parsed.flag('limited-quantity'),
    arrows: parsed.flag('arrows'),
  };
  const product = open(parsed.positional[0]!, io);
  if (!product) return exit.badInput;
  const { record } = product;
  const pack = choosePack(record, parsed.text('pack'));
  const prefix = parsed.text('company-prefix');
  const gtins = [pack.gtin, pack.case?.gtin ?? null].filter(gtin => gtin !== null);
  const prefixed = prefix === null ? [] : prefixFindings(prefixFit(prefix, gtins), prefix);
  if (hasErrors(prefixed)) {
    report(prefixed, io);
    return exit.notMet;
  }
  const facts = caseFacts(record, pack, question);
  if (!facts) {
    report(
      [
        {
          code: 'case-missing',
          severity: 'error',
          message: `pack \`${pack.id}\` has no case`,
          hint: 'add `case: {count: 20, gtin: "…", tare: 0.9 kg}` to the pack',
          at: pack.at,
        },
      ],
      io,
    );
    return exit.notMet;
  }
  const options = {
    pack,
    facts,
    batch,
    printer: (parsed.text('printer') ?? '203') as PrinterName,
    pallet: parsed.flag('pallet'),
    arrows: parsed.flag('arrows'),
    date,
  };
  const draft = await draftCase(record, options, await loadFonts());
  const findings = [...prefixed, ...draft.diagnostics];
  report(findings, io);
  const folder = outputFolder(record.code, parsed.text('out'));
  const files = writeFiles(folder, draft.files);
  if (parsed.flag('json')) {
    const { name, code } = record;
    const answer = { schema: 'labelwright/case/1', product: { name, code }, pack: pack.id, ...facts };
    io.out(`${JSON.stringify({ ...answer, files, findings }, null, 2)}\n`);
  } else io.out(`${[...caseText(facts, record.name, pack), ...files].join('\n')}\n`);
  return hasErrors(draft.diagnostics) ? exit.notMet : exit.done;
}

/** A measure given as an option, in the base unit. */
function measure(parsed: ParsedArguments, name: string, kind: UnitKind, example: string): Exact | null {
  const text = parsed.text(name);
  if (text === null) return null;
  const read = readMeasure(text, kind);
  if (!read.ok || read.value.base.value <= 0) return refuse(`--${name} ${text} is not a ${kind}, ${example}`);
  return read.value.base;
}

function kilograms(parsed: ParsedArguments, name: string): Exact | null {
  const grams = measure(parsed, name, 'mass', 'such as 62 g');
  return grams && inUnit(grams, 'mass', 'kg');
}

function whole(parsed: ParsedArguments, name: string): number | null {
  const text = parsed.text(name);
  if (text === null) return null;
  if (!/^[1-9]\d{0,5}$/.test(text)) return refuse(`--${name} ${text} is not a whole number from 1`);
  return Number(text);
}

/** `400x300x280mm`, `16 x 12 x 11 in`: length, width and height of the case. */
function caseSize(parsed: ParsedArguments): CaseSize | null {
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
function ssccOf(parsed: ParsedArguments): string | null {
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
