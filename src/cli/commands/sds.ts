import { draftSheet } from '../../draft/draft-sheet.ts';
import { copyMark } from '../../draft/inputs-of.ts';
import type { PaperName } from '../../layout/sheet/layout-sheet.ts';
import type { BasisId } from '../../reference/basis.ts';
import { loadFonts } from '../../text/font-library.ts';
import { type CommandUsage, parseArguments } from '../arguments.ts';
import { leaveBehind, printWritten, store } from '../deliver.ts';
import { openClassified, outputFolder, report } from '../draft.ts';
import { exit, type Io } from '../io.ts';

/** Bases for which there is a template of the data sheet. */
const sheetBases: readonly BasisId[] = ['us-hcs'];

const usage: CommandUsage = {
  usage: `sds RECORD [--basis ${sheetBases.join('|')}] [--paper letter|a4] [--replace] [--out DIR] [--json] [--as-of YYYY-MM-DD]`,
  options: {
    basis: sheetBases,
    paper: ['letter', 'a4'],
    replace: 'flag',
    out: 'text',
    json: 'flag',
    'as-of': 'date',
  },
  positional: [1, 1],
};

/** Drafts the safety data sheet as PDF, HTML and JSON. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, usage);
  const date = parsed.text('as-of') ?? io.today;
  const basis = (parsed.text('basis') ?? 'us-hcs') as BasisId;
  const [path, out] = [parsed.positional[0]!, parsed.text('out')];
  const product = await openClassified(path, basis, date, io, out);
  if (!product) return exit.badInput;
  const paper = (parsed.text('paper') ?? 'letter') as PaperName;
  const sheet = await draftSheet(product, { date, paper }, await loadFonts());
  report(sheet.diagnostics, io);
  if (!sheet.ok) {
    const { fingerprint } = copyMark(product, 'distribution');
    report(await leaveBehind(path, out, 'the data sheet cannot be made', fingerprint), io);
    return exit.notMet;
  }
  const { pdf, html, json } = sheet.value;
  const { findings, status, written } = await store(product, {
    folder: outputFolder(product.record.code, out),
    asOf: date,
    files: [
      { name: 'sds.pdf', kind: 'distribution', bytes: pdf },
      { name: 'sds.html', kind: 'distribution', bytes: html },
      { name: 'sds.json', kind: 'distribution', bytes: json },
    ],
    replace: parsed.flag('replace'),
  });
  report(findings, io);
  if (status === exit.done)
    printWritten(written, [...sheet.diagnostics, ...findings], parsed.flag('json'), io);
  return status;
}
