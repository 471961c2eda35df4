import { join } from 'node:path';
import { makePacket } from '../../draft/packet.ts';
import { MANIFEST } from '../../store/manifest.ts';
import { loadFonts } from '../../text/font-library.ts';
import { type CommandUsage, parseArguments } from '../arguments.ts';
import { leaveBehind, leaveOtherCodes, printWritten, putReviewForm, store } from '../deliver.ts';
import { openClassified, outputFolder, report } from '../draft.ts';
import { exit, type Io } from '../io.ts';

const usage: CommandUsage = {
  usage: 'packet RECORD [--replace] [--out DIR] [--json] [--as-of YYYY-MM-DD]',
  options: { replace: 'flag', out: 'text', json: 'flag', 'as-of': 'date' },
  positional: [1, 1],
};

/**
 * Makes everything for one product, with an index page. A label that cannot be made is said and does not stop the
 * rest. Returns the exit status.
 */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, usage);
  const asOf = parsed.text('as-of') ?? io.today;
  const path = parsed.positional[0]!;
  const out = parsed.text('out');
  const product = await openClassified(path, 'us-hcs', asOf, io, out);
  if (!product) return exit.badInput;
  const packet = await makePacket(product, asOf, await loadFonts());
  report(packet.diagnostics, io);
  if (packet.refused) {
    report(await leaveBehind(path, out, 'the data sheet cannot be made'), io);
    return exit.notMet;
  }
  const folder = outputFolder(product.record.code, out);
  const { files, missing } = packet;
  const replace = parsed.flag('replace');
  const stored = await store(product, {
    folder,
    asOf,
    files,
    missing,
    replace,
    whole: true,
  });
  report(stored.findings, io);
  if (stored.status !== exit.done) return stored.status;
  const after = [...(await leaveOtherCodes(path, folder)), ...putReviewForm(product)];
  report(after, io);
  const findings = [...packet.diagnostics, ...stored.findings, ...after];
  printWritten([...stored.written, join(folder, MANIFEST)], findings, parsed.flag('json'), io);
  return missing.length > 0 ? exit.notMet : exit.done;
}
