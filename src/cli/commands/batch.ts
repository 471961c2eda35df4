import { readBatchSize } from '../../batch/batch-size.ts';
import { looksLikeLotCode, lotCode, MOST_BATCHES, readLotCode } from '../../batch/lot-code.ts';
import { batchJson } from '../../draft/batch-json.ts';
import { draftBatch } from '../../draft/draft-batch.ts';
import { PRINTER_NAMES, type PrinterName } from '../../layout/roll-printer.ts';
import { usual } from '../../reference/basis.ts';
import { type Diagnostic, hasErrors } from '../../report/diagnostic.ts';
import { renderJson } from '../../report/render.ts';
import { loadFonts } from '../../text/font-library.ts';
import { batchText } from '../../words/en/batch-text.ts';
import { batchWords } from '../../words/en/batch-ticket.ts';
import { type ParsedArguments, parseArguments, UsageError } from '../arguments.ts';
import type { Command } from '../command.ts';
import { store } from '../deliver.ts';
import { openClassified, outputFolder } from '../draft.ts';
import { exit, type Io } from '../io.ts';
import { allow, asOf, json, out, record, replace } from '../options.ts';
import { report } from '../report.ts';

/** The command as data. */
export const command: Command = {
  name: 'batch',
  does: 'scales the formula to a batch ticket with order, cautions, lot and yield, and labels its raw materials',
  place: 45,
  about: [
    'The ticket and the labels go to a folder of their own, out/<code>/batch-<lot>/. They hold the formula: keep them in the shop.',
    'The lot code is year, month, day, number of the batch on that day and a check character (ISO/IEC 7064, MOD 11-2). With --lot alone a code is decoded.',
  ],
  argument: { ...record, count: 'optional' },
  options: {
    size: {
      kind: 'text',
      value: 'SIZE',
      does: 'size of the batch: gal, L, lb, kg, or containers such as 3 drums, 1/2 drum, 2 pails; that of the record where it is left out',
    },
    made: { kind: 'date', does: 'day of the batch; today where it is left out' },
    number: {
      kind: 'text',
      value: 'N',
      does: `number of the batch on its day, counted over the shop; 1 where it is left out, ${MOST_BATCHES} at most`,
    },
    lot: {
      kind: 'text',
      value: 'LOT',
      does: 'lot code to decode, or to print on the ticket in place of a new one',
    },
    'as-listed': { kind: 'flag', does: 'keeps the order of the formula instead of proposing one' },
    printer: {
      kind: PRINTER_NAMES,
      does: `dots per inch of the printer of the labels; ${PRINTER_NAMES[0]} where it is left out`,
    },
    replace,
    out,
    json,
    'as-of': asOf,
    allow,
  },
  examples: [
    { call: 'batch product.yaml --size 250gal', does: 'the ticket of a batch of 250 gallons' },
    { call: 'batch product.yaml --size 3.5drums --number 2', does: 'the second batch of today' },
    { call: 'batch --lot 261125027', does: 'the batch and day of a code on a bottle' },
  ],
  run,
};

const refuse = (message: string): never => {
  throw new UsageError(message, command);
};

/** Drafts a batch ticket, or decodes a lot code. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const [path] = parsed.positional;
  if (path === undefined) return decode(parsed, io);
  const lot = lotOf(parsed, io);
  if (!lot.ok) {
    report([lot.finding], io);
    return exit.notMet;
  }
  const asOf = parsed.text('as-of') ?? io.today;
  const product = await openClassified(path, usual, asOf, io, parsed.text('out'));
  if (!product) return exit.badInput;
  const written = parsed.text('size') ?? product.record.batch?.written;
  if (written === undefined) return refuse('--size is needed: the record names no `batch`');
  const size = readBatchSize(written);
  if (!size.ok) return refuse(`--size ${size.message}${size.hint ? `; ${size.hint}` : ''}`);
  const drafted = await draftBatch(
    product,
    {
      ...lot,
      size: size.value,
      asListed: parsed.flag('as-listed'),
      printer: (parsed.text('printer') ?? PRINTER_NAMES[0]) as PrinterName,
    },
    await loadFonts(),
  );
  if (!drafted.ok) {
    report(drafted.diagnostics, io);
    return exit.notMet;
  }
  const { files, ticket, diagnostics } = drafted.value;
  const { name, code } = product.record;
  const folder = parsed.text('out') ?? `${outputFolder(code, null)}/batch-${folderName(lot.lot)}`;
  const stored = await store(product, {
    folder,
    asOf,
    files: files.map(file => ({ ...file, kind: 'review' as const })),
    replace: parsed.flag('replace'),
  });
  const findings = [...diagnostics, ...stored.findings];
  report(findings, io);
  const { written: paths, status } = stored;
  if (parsed.flag('json')) {
    const answer = { ...batchJson({ name, code }, lot, ticket), files: paths };
    io.out(`${JSON.stringify({ ...answer, findings: renderJson(findings) }, null, 2)}\n`);
  } else io.out(`${[...batchText({ name, code }, lot.lot, ticket), ...paths].join('\n')}\n`);
  if (status !== exit.done) return status;
  return hasErrors(diagnostics) ? exit.notMet : exit.done;
}

const folderName = (lot: string): string => lot.replace(/[^\w.-]+/g, '-');

type ChosenLot =
  | { readonly ok: true; readonly lot: string; readonly lotMeaning: string | null; readonly made: string }
  | { readonly ok: false; readonly finding: Diagnostic };

/** The lot that the call gives, or a new one. */
function lotOf(parsed: ParsedArguments, io: Io): ChosenLot {
  const given = parsed.text('lot');
  const [made, number] = [parsed.text('made') ?? io.today, parsed.text('number') ?? '1'];
  if (given === null) {
    if (!/^[1-9]\d?$/.test(number))
      refuse(`--number ${number} is not a whole number from 1 to ${MOST_BATCHES}`);
    if (!made.startsWith('20')) refuse(`--made ${made}: lot codes have room for the years 2000 to 2099`);
    const lot = { made, number: Number(number) };
    return { ok: true, made, lot: lotCode(lot), lotMeaning: batchWords.lotText(made, lot.number) };
  }
  if (parsed.text('number') !== null) refuse('--lot and --number exclude each other');
  if (!looksLikeLotCode(given)) return { ok: true, made, lot: given, lotMeaning: null };
  const read = readLotCode(given);
  if (!read.ok)
    return {
      ok: false,
      finding: { code: read.code ?? 'lot', severity: 'error', message: read.message, hint: read.hint },
    };
  if (parsed.text('made') !== null && read.value.made !== made)
    refuse(`--lot ${given} is of ${read.value.made}, and --made says ${made}`);
  return {
    ok: true,
    made: read.value.made,
    lot: given,
    lotMeaning: batchWords.lotText(read.value.made, read.value.number),
  };
}

/** Says which batch a lot code is of. */
function decode(parsed: ParsedArguments, io: Io): number {
  const given = parsed.text('lot');
  if (given === null) return refuse('a record is needed, or --lot with a code to decode');
  const read = readLotCode(given);
  if (!read.ok) {
    report([{ code: read.code ?? 'lot', severity: 'error', message: read.message, hint: read.hint }], io);
    return read.code === 'check-digit' ? exit.notMet : exit.badInput;
  }
  const { made, number } = read.value;
  io.out(
    parsed.flag('json')
      ? `${JSON.stringify({ schema: 'labelwright/lot/1', lot: given, made, number }, null, 2)}\n`
      : `${given}: ${batchWords.lotText(made, number)}\n`,
  );
  return exit.done;
}
