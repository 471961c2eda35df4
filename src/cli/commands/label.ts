import { copyMark } from '../../draft/inputs-of.ts';
import { labelJson } from '../../draft/label-json.ts';
import type { LabelOptions, LabelTarget } from '../../draft/label-options.ts';
import { LABEL_TARGETS } from '../../draft/label-stock.ts';
import { dueLabels, labelStem } from '../../draft/purposes/due-labels.ts';
import { purposes } from '../../draft/purposes/purposes.ts';
import { tryDraftLabel } from '../../draft/try-draft-label.ts';
import type { LabelPurpose } from '../../labelling/purposes.ts';
import { type LabelLanguages, labelLanguages } from '../../notation/languages.ts';
import { usual } from '../../reference/basis.ts';
import { hasErrors } from '../../report/diagnostic.ts';
import { loadFonts } from '../../text/font-library.ts';
import { en } from '../../words/en/index.ts';
import { parseArguments } from '../arguments.ts';
import { choosePack } from '../choose-pack.ts';
import type { Command } from '../command.ts';
import { leaveBehind, printWritten, store } from '../deliver.ts';
import { openClassified, outputFolder } from '../draft.ts';
import { exit, type Io } from '../io.ts';
import { extraQuestion, labelExtras } from '../label-extras.ts';
import { outputProfile, panelSize } from '../label-question.ts';
import { allow, asOf, json, out, record, replace } from '../options.ts';
import { pressOptions, pressQuestion } from '../press-question.ts';
import { report } from '../report.ts';

const drafted: readonly LabelPurpose[] = purposes.map(({ id }) => id);

/** The command as data. */
export const command: Command = {
  name: 'label',
  does: 'drafts the label of a pack as a print-ready PDF: one page, die line on a layer of its own',
  place: 50,
  about: [
    'The text is set at the largest size that fits the die and never under the size that the law asks; where it does not fit, the label is refused with the dies that would hold it.',
  ],
  argument: record,
  options: {
    pack: { kind: 'text', value: 'ID', does: 'pack of the record; may be left out where there is one' },
    for: {
      kind: drafted,
      does: 'what the label is for; where it is left out, what `sold-to` of the record makes due first',
    },
    target: {
      kind: LABEL_TARGETS,
      does: 'what prints it: a press (where it is left out), or a roll printer with black alone, by its dots per inch',
    },
    language: {
      kind: labelLanguages,
      does: 'language of the label, en where it is left out; in the United States another one is added to the English',
    },
    marks: { kind: 'flag', does: 'crop marks and a line on the job, outside the bleed' },
    sheet: {
      kind: 'text',
      value: 'FILE',
      does: 'sets it many times on sheets for an office printer, as that file describes them',
      completes: 'file',
    },
    copies: { kind: 'text', value: 'N', does: 'labels of each lot on the sheets; without lots, labels' },
    picture: {
      kind: ['png', 'svg'],
      does: 'adds a picture for listings: white ground, sRGB, the trim alone',
    },
    only: { kind: ['precautions'], does: 'the regulated panel alone, to drop into artwork' },
    size: {
      kind: 'text',
      value: 'WxH',
      does: 'size of that panel, such as 80x60mm; that of the label where it is left out; of a sign for a tank',
    },
    icc: {
      kind: 'text',
      value: 'FILE',
      does: 'ICC profile of the press: the file is built to PDF/X-4',
      completes: 'file',
    },
    condition: { kind: 'text', value: 'NAME', does: 'printing condition of the profile, such as FOGRA39' },
    ...pressOptions,
    replace,
    out,
    json,
    'as-of': asOf,
    allow,
  },
  examples: [
    {
      call: 'label product.yaml --icc press.icc --condition FOGRA39',
      does: 'the label built to PDF/X-4 with the profile of the printer',
    },
    { call: 'label product.yaml --pack bottle-946', does: 'the label of one pack' },
    {
      call: 'label product.yaml --only precautions --size 80x60mm',
      does: 'its regulated panel, without die line or bleed',
    },
    {
      call: 'label product.yaml --target printer-300',
      does: 'the label for the roll printer of the shop: black alone, bars on its dots',
    },
    {
      call: 'label product.yaml --for tank --size 12x9in',
      does: 'a sign for a tank of the shop, or for another container that stays there',
    },
    {
      call: 'label product.yaml --for eu-supply --language es',
      does: 'the label for supply in the Union, in Spanish',
    },
    { call: 'label product.yaml --sheet sheet.yaml', does: 'labels on the sheets of an office printer' },
  ],
  run,
};

/** Drafts the label of one pack as a print-ready PDF. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const date = parsed.text('as-of') ?? io.today;
  const [size, output] = [panelSize(parsed), outputProfile(parsed)];
  const [path, out] = [parsed.positional[0]!, parsed.text('out')];
  const target = (parsed.text('target') ?? 'press') as LabelTarget;
  const press = pressQuestion(parsed, target);
  if (!press.ok) {
    report(press.diagnostics, io);
    return exit.badInput;
  }
  const product = await openClassified(path, usual, date, io, out);
  if (!product) return exit.badInput;
  const due = dueLabels(product);
  const purpose = (parsed.text('for') ?? due.made[0]) as LabelPurpose;
  const [first] = product.record.packs;
  // A sign is the same for all packs.
  const id = parsed.text('pack') ?? (purpose === 'tank' ? (first?.id ?? null) : null);
  const pack = choosePack(product.record, id);
  const marks = parsed.flag('marks');
  const language = (parsed.text('language') ?? 'en') as LabelLanguages;
  const extra = extraQuestion(parsed, target);
  const only = parsed.text('only') === 'precautions' ? 'precautions' : undefined;
  const fonts = await loadFonts();
  const options: LabelOptions = {
    pack,
    purpose,
    only,
    date,
    size,
    output,
    target,
    marks,
    press: press.value,
    language,
  };
  const label = await tryDraftLabel(product, options, fonts, en);
  report(label.diagnostics, io);
  const request = { record: product.record, pack, purpose, target };
  const asJson = (file: string | null) => `${JSON.stringify(labelJson(request, label, file), null, 2)}\n`;
  if (!label.bytes) {
    const { fingerprint } = copyMark(product, 'distribution');
    report(await leaveBehind(path, out, `the label of ${pack.id} cannot be made`, fingerprint), io);
    if (parsed.flag('json')) io.out(asJson(null));
    return exit.notMet;
  }
  const stem = labelStem(pack.id, purpose, due, { target, only, language });
  const name = `${stem}.pdf`;
  const extras = await labelExtras(product, label, { ...extra, stem }, fonts);
  report(extras.findings, io);
  if (extras.status !== exit.done) return extras.status;
  const { findings, status, written } = await store(product, {
    folder: outputFolder(product.record.code, out),
    asOf: date,
    files: [{ name, kind: 'distribution', bytes: label.bytes }, ...extras.files],
    replace: parsed.flag('replace'),
  });
  report(findings, io);
  if (status === exit.done && parsed.flag('json')) io.out(asJson(name));
  else if (status === exit.done)
    printWritten(written, [...label.diagnostics, ...extras.findings, ...findings], false, io);
  // The page is made, and yet something that the law asks is not met by it.
  return status === exit.done && hasErrors(label.diagnostics) ? exit.notMet : status;
}
