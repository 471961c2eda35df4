import { parseArguments } from '../arguments.ts';
import type { Command } from '../command.ts';
import { printWritten } from '../deliver.ts';
import type { Io } from '../io.ts';
import { onePacket } from '../one-packet.ts';
import { allow, asOf, json, out, record, replace } from '../options.ts';

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

/** Makes everything for one product, with an index page. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const { status, written, findings } = await onePacket(
    parsed.positional[0]!,
    {
      date: parsed.text('as-of') ?? io.today,
      out: parsed.text('out'),
      replace: parsed.flag('replace'),
    },
    io,
  );
  if (written.length > 0) printWritten(written, findings, parsed.flag('json'), io);
  return status;
}
