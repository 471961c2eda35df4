import { draftLabel, type LabelAudience } from '../../draft/draft-label.ts';
import { copyMark } from '../../draft/inputs-of.ts';
import { loadFonts } from '../../text/font-library.ts';
import { type CommandUsage, parseArguments } from '../arguments.ts';
import { choosePack } from '../choose-pack.ts';
import { leaveBehind, printWritten, store } from '../deliver.ts';
import { openClassified, outputFolder, report } from '../draft.ts';
import { exit, type Io } from '../io.ts';

const audiences: readonly LabelAudience[] = ['us-workplace'];

const usage: CommandUsage = {
  usage: `label RECORD [--pack ID] [--for ${audiences.join('|')}] [--only precautions] [--replace] [--out DIR] [--json] [--as-of YYYY-MM-DD]`,
  options: {
    pack: 'text',
    for: audiences,
    only: ['precautions'],
    replace: 'flag',
    out: 'text',
    json: 'flag',
    'as-of': 'date',
  },
  positional: [1, 1],
};

/** Drafts the label of one pack as a print-ready PDF. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, usage);
  const date = parsed.text('as-of') ?? io.today;
  const [path, out] = [parsed.positional[0]!, parsed.text('out')];
  const product = await openClassified(path, 'us-hcs', date, io, out);
  if (!product) return exit.badInput;
  const pack = choosePack(product.record, parsed.text('pack'));
  const audience = (parsed.text('for') ?? 'us-workplace') as LabelAudience;
  const only = parsed.text('only') === 'precautions' ? 'precautions' : undefined;
  const label = await draftLabel(product, { pack, audience, only, date }, await loadFonts());
  report(label.diagnostics, io);
  if (!label.ok) {
    const { fingerprint } = copyMark(product, 'distribution');
    report(await leaveBehind(path, out, `the label of ${pack.id} cannot be made`, fingerprint), io);
    return exit.notMet;
  }
  const name = `label-${pack.id}${only ? `-${only}` : ''}.pdf`;
  const { findings, status, written } = await store(product, {
    folder: outputFolder(product.record.code, out),
    asOf: date,
    files: [{ name, kind: 'distribution', bytes: label.value }],
    replace: parsed.flag('replace'),
  });
  report(findings, io);
  if (status === exit.done)
    printWritten(written, [...label.diagnostics, ...findings], parsed.flag('json'), io);
  return status;
}
