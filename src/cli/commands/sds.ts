import { draftSheet } from '../../draft/draft-sheet.ts';
import type { PaperName } from '../../layout/sheet/layout-sheet.ts';
import type { BasisId } from '../../reference/basis.ts';
import { loadFonts } from '../../text/font-library.ts';
import { en } from '../../words/en/index.ts';
import { parseArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { openClassified, outputFolder } from '../draft.ts';
import { exit, type Io } from '../io.ts';
import { allow, asOf, basis, json, out, record } from '../options.ts';
import { report } from '../report.ts';
import { writeOutput } from '../write-files.ts';

/** Bases for which there is a template of the data sheet. */
const sheetBases: readonly BasisId[] = ['us-hcs'];

/** The command as data. */
export const command: Command = {
  name: 'sds',
  does: 'drafts the safety data sheet as tagged PDF, web page and JSON',
  place: 60,
  argument: record,
  options: {
    basis: basis(sheetBases),
    paper: { kind: ['letter', 'a4'], does: 'size of the pages; letter where it is left out' },
    out,
    json,
    'as-of': asOf,
    allow,
  },
  examples: [{ call: 'sds product.yaml --paper a4', does: 'the sheet on A4' }],
  run,
};

/** Drafts the safety data sheet as PDF, HTML and JSON. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const date = parsed.text('as-of') ?? io.today;
  const by = (parsed.text('basis') ?? 'us-hcs') as BasisId;
  const product = await openClassified(parsed.positional[0]!, by, date, io);
  if (!product) return exit.badInput;
  const paper = (parsed.text('paper') ?? 'letter') as PaperName;
  const sheet = await draftSheet(product, { date, paper }, await loadFonts(), en);
  report(sheet.diagnostics, io);
  if (!sheet.ok) return exit.notMet;
  const { pdf, html, json } = sheet.value;
  const files = [
    { name: 'sds.pdf', bytes: pdf },
    { name: 'sds.html', bytes: html },
    { name: 'sds.json', bytes: json },
  ];
  return writeOutput(outputFolder(product.record.code, parsed.text('out')), files, parsed.flag('json'), io);
}
