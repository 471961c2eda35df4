import type { LabelAudience } from '../../draft/draft-label.ts';
import { copyMark } from '../../draft/inputs-of.ts';
import { labelJson } from '../../draft/label-json.ts';
import { tryDraftLabel } from '../../draft/try-draft-label.ts';
import { usual } from '../../reference/basis.ts';
import { loadFonts } from '../../text/font-library.ts';
import { en } from '../../words/en/index.ts';
import { parseArguments } from '../arguments.ts';
import { choosePack } from '../choose-pack.ts';
import type { Command } from '../command.ts';
import { leaveBehind, printWritten, store } from '../deliver.ts';
import { openClassified, outputFolder } from '../draft.ts';
import { exit, type Io } from '../io.ts';
import { allow, asOf, json, out, record, replace } from '../options.ts';
import { report } from '../report.ts';

const audiences: readonly LabelAudience[] = ['us-workplace'];

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
    for: { kind: audiences, does: `whom the label is for; ${audiences[0]} where it is left out` },
    only: { kind: ['precautions'], does: 'the regulated panel alone, to drop into artwork' },
    replace,
    out,
    json,
    'as-of': asOf,
    allow,
  },
  examples: [
    { call: 'label product.yaml --pack bottle-946', does: 'the label of one pack' },
    { call: 'label product.yaml --only precautions', does: 'its regulated panel, without die line or bleed' },
  ],
  run,
};

/** Drafts the label of one pack as a print-ready PDF. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const date = parsed.text('as-of') ?? io.today;
  const [path, out] = [parsed.positional[0]!, parsed.text('out')];
  const product = await openClassified(path, usual, date, io, out);
  if (!product) return exit.badInput;
  const pack = choosePack(product.record, parsed.text('pack'));
  const audience = (parsed.text('for') ?? 'us-workplace') as LabelAudience;
  const only = parsed.text('only') === 'precautions' ? 'precautions' : undefined;
  const label = await tryDraftLabel(product, { pack, audience, only, date }, await loadFonts(), en);
  report(label.diagnostics, io);
  const request = { record: product.record, pack, purpose: audience };
  const asJson = (file: string | null) => `${JSON.stringify(labelJson(request, label, file), null, 2)}\n`;
  if (!label.bytes) {
    const { fingerprint } = copyMark(product, 'distribution');
    report(await leaveBehind(path, out, `the label of ${pack.id} cannot be made`, fingerprint), io);
    if (parsed.flag('json')) io.out(asJson(null));
    return exit.notMet;
  }
  const name = `label-${pack.id}${only ? `-${only}` : ''}.pdf`;
  const { findings, status, written } = await store(product, {
    folder: outputFolder(product.record.code, out),
    asOf: date,
    files: [{ name, kind: 'distribution', bytes: label.bytes }],
    replace: parsed.flag('replace'),
  });
  report(findings, io);
  if (status === exit.done && parsed.flag('json')) io.out(asJson(name));
  else if (status === exit.done) printWritten(written, [...label.diagnostics, ...findings], false, io);
  return status;
}
