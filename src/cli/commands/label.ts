import { type LabelAudience, tryDraftLabel } from '../../draft/draft-label.ts';
import { labelJson } from '../../draft/label-json.ts';
import { loadFonts } from '../../text/font-library.ts';
import { type CommandUsage, parseArguments } from '../arguments.ts';
import { choosePack } from '../choose-pack.ts';
import { openClassified, outputFolder, report } from '../draft.ts';
import { exit, type Io } from '../io.ts';
import { writeOutput } from '../write-files.ts';

const audiences: readonly LabelAudience[] = ['us-workplace'];

const usage: CommandUsage = {
  usage: `label RECORD [--pack ID] [--for ${audiences.join('|')}] [--only precautions] [--out DIR] [--json] [--as-of YYYY-MM-DD]`,
  options: {
    pack: 'text',
    for: audiences,
    only: ['precautions'],
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
  const product = await openClassified(parsed.positional[0]!, 'us-hcs', date, io);
  if (!product) return exit.badInput;
  const pack = choosePack(product.record, parsed.text('pack'));
  const audience = (parsed.text('for') ?? 'us-workplace') as LabelAudience;
  const only = parsed.text('only') === 'precautions' ? 'precautions' : undefined;
  const label = await tryDraftLabel(product, { pack, audience, only, date }, await loadFonts());
  report(label.diagnostics, io);
  const request = { record: product.record, pack, purpose: audience };
  const name = `label-${pack.id}${only ? `-${only}` : ''}.pdf`;
  const json = (file: string | null) => `${JSON.stringify(labelJson(request, label, file), null, 2)}\n`;
  if (!label.bytes) {
    if (parsed.flag('json')) io.out(json(null));
    return exit.notMet;
  }
  const folder = outputFolder(product.record.code, parsed.text('out'));
  const files = [{ name, bytes: label.bytes }];
  const quiet = parsed.flag('json') ? { ...io, out: () => undefined } : io;
  const status = writeOutput(folder, files, false, quiet);
  if (status === exit.done && parsed.flag('json')) io.out(json(name));
  return status;
}
