import { sheetForm } from '../../document/sheet/form.ts';
import { draftSheet } from '../../draft/draft-sheet.ts';
import { copyMark } from '../../draft/inputs-of.ts';
import { sheetFiles } from '../../draft/market-sheets.ts';
import type { PaperName } from '../../layout/sheet/layout-sheet.ts';
import type { Language } from '../../notation/languages.ts';
import { type BasisId, basisIds, usual } from '../../reference/basis.ts';
import { loadFonts } from '../../text/font-library.ts';
import { wordsOf } from '../../words/words-of.ts';
import { parseArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { leaveBehind, printWritten, store } from '../deliver.ts';
import { openClassified, outputFolder } from '../draft.ts';
import { againstFormer } from '../former-sheet.ts';
import { exit, type Io } from '../io.ts';
import { allow, asOf, basis, json, language, out, record, replace } from '../options.ts';
import { report } from '../report.ts';

/** The command as data. */
export const command: Command = {
  name: 'sds',
  does: 'drafts the safety data sheet as tagged PDF, web page and JSON',
  place: 60,
  argument: record,
  options: {
    basis: basis(basisIds),
    paper: {
      kind: ['letter', 'a4'],
      does: 'size of the pages; where it is left out letter, for eu-clp and un-ghs A4',
    },
    language,
    replace,
    out,
    json,
    'as-of': asOf,
    allow,
  },
  examples: [
    { call: 'sds product.yaml --paper a4', does: 'the sheet on A4' },
    { call: 'sds product.yaml --basis eu-clp', does: 'the sheet to Annex II of REACH, as sds-eu.pdf' },
    {
      call: 'sds product.yaml --basis eu-clp --language es',
      does: 'the same sheet in Spanish, as sds-eu-es.pdf',
    },
  ],
  run,
};

/** Drafts the safety data sheet as PDF, HTML and JSON. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const date = parsed.text('as-of') ?? io.today;
  const by = (parsed.text('basis') ?? usual) as BasisId;
  const [path, folder] = [parsed.positional[0]!, parsed.text('out')];
  const product = await openClassified(path, by, date, io, folder);
  if (!product) return exit.badInput;
  const said = (parsed.text('language') ?? 'en') as Language;
  const paper = (parsed.text('paper') ?? sheetForm(by).paper) as PaperName;
  const sheet = await draftSheet(product, { date, paper }, await loadFonts(), await wordsOf(said));
  report(sheet.diagnostics, io);
  if (!sheet.ok) {
    const { fingerprint } = copyMark(product, 'distribution');
    report(await leaveBehind(path, folder, 'the data sheet cannot be made', fingerprint), io);
    return exit.notMet;
  }
  const into = outputFolder(product.record.code, folder);
  const moved = againstFormer(product.record, into, by, sheet.value.json, io);
  report(moved, io);
  const { findings, status, written } = await store(product, {
    folder: into,
    asOf: date,
    files: sheetFiles(sheet.value, by, said),
    replace: parsed.flag('replace'),
  });
  report(findings, io);
  if (status === exit.done)
    printWritten(written, [...sheet.diagnostics, ...moved, ...findings], parsed.flag('json'), io);
  return status;
}
