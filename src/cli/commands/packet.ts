import { makePacket } from '../../draft/packet.ts';
import { hasErrors } from '../../report/diagnostic.ts';
import { loadFonts } from '../../text/font-library.ts';
import { en } from '../../words/en/index.ts';
import { parseArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { openClassified, outputFolder } from '../draft.ts';
import { exit, type Io } from '../io.ts';
import { allow, asOf, json, out, record } from '../options.ts';
import { report } from '../report.ts';
import { writeOutput } from '../write-files.ts';

/** The command as data. */
export const command: Command = {
  name: 'packet',
  does: 'makes everything for one product, with an index page',
  place: 100,
  about: ['A packet with a part that cannot be made is refused whole.'],
  argument: record,
  options: { out, json, 'as-of': asOf, allow },
  examples: [
    { call: 'packet product.yaml', does: 'label, data sheet, classification and work sheet in out/<code>/' },
  ],
  run,
};

/** Makes everything for one product, with an index page. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
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
