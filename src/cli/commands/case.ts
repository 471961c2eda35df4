import { prefixFit } from '../../barcode/company-prefix.ts';
import { draftCase } from '../../draft/draft-case.ts';
import { copyMarkAt } from '../../draft/inputs-of.ts';
import { casePrinter, markedCase } from '../../draft/marked-case.ts';
import { PRINTER_NAMES, type PrinterName } from '../../layout/roll-printer.ts';
import { PALLET_NAMES } from '../../logistics/pallet.ts';
import { usual } from '../../reference/basis.ts';
import { hasErrors } from '../../report/diagnostic.ts';
import { renderJson } from '../../report/render.ts';
import { loadFonts } from '../../text/font-library.ts';
import { caseText } from '../../words/en/case.ts';
import { caseMissing } from '../../words/en/case-findings.ts';
import { prefixFindings } from '../../words/en/company-prefix.ts';
import { parseArguments, UsageError } from '../arguments.ts';
import { caseQuestion } from '../case-question.ts';
import { choosePack } from '../choose-pack.ts';
import type { Command } from '../command.ts';
import { leaveBehind, store } from '../deliver.ts';
import { openClassified, outputFolder } from '../draft.ts';
import { exit, type Io } from '../io.ts';
import { allow, asOf, json, record as oneRecord, out, replace } from '../options.ts';
import { report } from '../report.ts';

/** The command as data. */
export const command: Command = {
  name: 'case',
  does: 'drafts the label of a case for a roll printer, its marks, and the label and load of its pallet',
  place: 65,
  about: [
    'Labels are 4 x 6 in, black alone, every bar on whole dots of the printer. A label that something stands against is left out and the rest is made; the exit status is then 1.',
    'The marks are those that `ship` works out for highway and rail: limited quantity, or number and shipping name, with RQ and arrows. --limited-quantity and --arrows ask for them whatever it says; --no-marks leaves them out.',
  ],
  argument: oneRecord,
  options: {
    pack: { kind: 'text', value: 'ID', does: 'pack of the record; may be left out where there is one' },
    lot: { kind: 'text', value: 'LOT', does: 'batch or lot number, AI (10)' },
    made: { kind: 'date', does: 'date of production, AI (11)' },
    'use-by': { kind: 'date', does: 'expiration date, AI (17)' },
    printer: {
      kind: PRINTER_NAMES,
      does: `dots per inch of the printer; that of the record, else ${PRINTER_NAMES[0]}, where it is left out`,
    },
    'bottle-tare': {
      kind: 'text',
      value: 'MASS',
      does: 'mass of an empty pack with its closure, such as 62 g, in place of that of the record',
    },
    'case-tare': {
      kind: 'text',
      value: 'MASS',
      does: 'mass of the empty case, in place of that of the record',
    },
    'limited-quantity': { kind: 'flag', does: 'adds the mark of a limited quantity, 49 CFR 172.315' },
    arrows: { kind: 'flag', does: 'adds a label with orientation arrows, 49 CFR 172.312' },
    'no-marks': { kind: 'flag', does: 'leaves out the marks that `ship` works out' },
    size: {
      kind: 'text',
      value: 'LxWxH',
      does: 'outer size of the case, such as 400x300x280mm; with it the load of the pallet is drawn',
    },
    pallet: { kind: 'flag', does: 'adds the logistic label of the pallet' },
    'pallet-type': { kind: PALLET_NAMES, does: `pallet; ${PALLET_NAMES[0]} where it is left out` },
    'max-height': { kind: 'text', value: 'LENGTH', does: 'greatest height of the loaded pallet' },
    layers: { kind: 'text', value: 'N', does: 'layers on the pallet, where not as many as fit' },
    cases: { kind: 'text', value: 'N', does: 'cases on the pallet, where it is not full' },
    sscc: { kind: 'text', value: 'NUMBER', does: 'SSCC of the pallet, with or without its check digit' },
    'company-prefix': {
      kind: 'text',
      value: 'P',
      does: 'GS1 company prefix that an SSCC is made from, with --serial',
    },
    serial: { kind: 'text', value: 'N', does: 'serial reference of the SSCC' },
    extension: { kind: 'text', value: 'D', does: 'extension digit of the SSCC; 0 where it is left out' },
    replace,
    out,
    json,
    'as-of': asOf,
    allow,
  },
  examples: [
    {
      call: 'case product.yaml --lot L2026A --use-by 2027-12-31 --printer 300',
      does: 'the label of a case, with its batch',
    },
    {
      call: 'case product.yaml --size 400x300x280mm --pallet --company-prefix 0614141 --serial 1',
      does: 'the label of the pallet too, and a drawing of its load',
    },
  ],
  run,
};

const refuse = (message: string): never => {
  throw new UsageError(message, command);
};

/** Drafts case and pallet labels for a roll printer. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const date = parsed.text('as-of') ?? io.today;
  const asked = caseQuestion(parsed, refuse);
  const byCall = asked.limitedQuantity || asked.arrows;
  if (byCall && parsed.flag('no-marks')) refuse('--no-marks excludes --limited-quantity and --arrows');
  const [path, named] = [parsed.positional[0]!, parsed.text('out')];
  const product = await openClassified(path, usual, date, io, named);
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
  const marked = markedCase(product, pack, asked, parsed.flag('no-marks'));
  if (!marked) {
    report([caseMissing(pack)], io);
    return exit.notMet;
  }
  const options = {
    pack,
    ...marked,
    batch: asked,
    printer: (parsed.text('printer') ?? casePrinter(pack)) as PrinterName,
    pallet: parsed.flag('pallet'),
    date,
    copy: copyMarkAt(product, 'distribution', date),
  };
  const { files, missing, diagnostics } = await draftCase(record, options, await loadFonts());
  if (files.length === 0) {
    report([...prefixed, ...marked.diagnostics, ...diagnostics], io);
    const reason = `no label of the case of ${pack.id} can be made`;
    report(await leaveBehind(path, named, reason, options.copy.fingerprint), io);
    return exit.notMet;
  }
  const stored = await store(product, {
    folder: outputFolder(record.code, named),
    asOf: date,
    files: files.map(({ name, bytes }) => ({ name, bytes, kind: 'distribution' as const })),
    missing,
    replace: parsed.flag('replace'),
  });
  const findings = [...prefixed, ...marked.diagnostics, ...diagnostics, ...stored.findings];
  report(findings, io);
  const { written, status } = stored;
  if (parsed.flag('json')) {
    const { name, code } = record;
    const answer = {
      schema: 'labelwright/case/1',
      product: { name, code },
      pack: pack.id,
      description: marked.description,
      ...marked.facts,
    };
    io.out(`${JSON.stringify({ ...answer, files: written, findings: renderJson(findings) }, null, 2)}\n`);
  } else io.out(`${[...caseText(marked.facts, record.name, pack), ...written].join('\n')}\n`);
  if (status !== exit.done) return status;
  return hasErrors(diagnostics) ? exit.notMet : exit.done;
}
