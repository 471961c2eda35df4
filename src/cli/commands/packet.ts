import { join } from 'node:path';
import { makePacket } from '../../draft/packet.ts';
import { usual } from '../../reference/basis.ts';
import { MANIFEST } from '../../store/manifest.ts';
import { loadFonts } from '../../text/font-library.ts';
import { en } from '../../words/en/index.ts';
import { parseArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { leaveBehind, leaveOtherCodes, printWritten, putReviewForm, store } from '../deliver.ts';
import { openClassified, outputFolder } from '../draft.ts';
import { exit, type Io } from '../io.ts';
import { allow, asOf, json, out, record, replace } from '../options.ts';
import { report } from '../report.ts';

/** The command as data. */
export const command: Command = {
  name: 'packet',
  does: 'makes everything for one product, with an index page',
  place: 100,
  about: [
    'A label that cannot be made is said and does not stop the rest; without the data sheet there is no packet.',
  ],
  argument: record,
  options: { replace, out, json, 'as-of': asOf, allow },
  examples: [
    { call: 'packet product.yaml', does: 'label, data sheet, classification and work sheet in out/<code>/' },
  ],
  run,
};

/**
 * Makes everything for one product, with an index page. A label that cannot be made is said and does not stop the
 * rest. Returns the exit status.
 */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const date = parsed.text('as-of') ?? io.today;
  const path = parsed.positional[0]!;
  const folderGiven = parsed.text('out');
  const product = await openClassified(path, usual, date, io, folderGiven);
  if (!product) return exit.badInput;
  const packet = await makePacket(product, date, await loadFonts(), en);
  report(packet.diagnostics, io);
  if (packet.refused) {
    report(await leaveBehind(path, folderGiven, 'the data sheet cannot be made'), io);
    return exit.notMet;
  }
  const folder = outputFolder(product.record.code, folderGiven);
  const { files, missing } = packet;
  const stored = await store(product, {
    folder,
    asOf: date,
    files,
    missing,
    replace: parsed.flag('replace'),
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
