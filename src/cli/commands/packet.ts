import { makePacket } from '../../draft/packet.ts';
import { hasErrors } from '../../report/diagnostic.ts';
import { loadFonts } from '../../text/font-library.ts';
import { en } from '../../words/en/index.ts';
import { type CommandUsage, parseArguments } from '../arguments.ts';
import { openClassified, outputFolder, report } from '../draft.ts';
import { exit, type Io } from '../io.ts';
import { writeOutput } from '../write-files.ts';

const usage: CommandUsage = {
  usage: 'packet RECORD [--out DIR] [--json] [--as-of YYYY-MM-DD]',
  options: { out: 'text', json: 'flag', 'as-of': 'date' },
  positional: [1, 1],
};

/** Makes everything for one product, with an index page. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, usage);
  const date = parsed.text('as-of') ?? io.today;
  const product = await openClassified(parsed.positional[0]!, 'us-hcs', date, io);
  if (!product) return exit.badInput;
  const packet = await makePacket(product, date, await loadFonts(), en);
  report(packet.diagnostics, io);
  // A packet with a part missing would pass for whole.
  if (hasErrors(packet.diagnostics)) return exit.notMet;
  return writeOutput(
    outputFolder(product.record.code, parsed.text('out')),
    packet.files,
    parsed.flag('json'),
    io,
  );
}
