import { draftTransport } from '../../draft/draft-transport.ts';
import { shipJson } from '../../draft/ship-json.ts';
import { shipText } from '../../draft/ship-text.ts';
import { usual } from '../../reference/basis.ts';
import { parseArguments } from '../arguments.ts';
import { choosePack } from '../choose-pack.ts';
import type { Command } from '../command.ts';
import { openClassified } from '../draft.ts';
import { exit, type Io } from '../io.ts';
import { allow, asOf, json, record } from '../options.ts';

/** The command as data. */
export const command: Command = {
  name: 'ship',
  does: 'gives the US transport description of a pack by highway and rail, and its packing limits',
  place: 70,
  about: [
    'Where data are missing it says which, with the answer for each case; the exit status is then 1.',
    'Other modes and later amendments are for the shipper to check in the current text.',
  ],
  argument: record,
  options: {
    pack: { kind: 'text', value: 'ID', does: 'pack of the record; may be left out where there is one' },
    json,
    'as-of': asOf,
    allow,
  },
  examples: [
    { call: 'ship product.yaml --pack bottle-946', does: 'how one pack is described for transport' },
  ],
  run,
};

/** The transport description of a pack and its packing limits. Returns the exit status: 1 where data are missing. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const date = parsed.text('as-of') ?? io.today;
  const product = await openClassified(parsed.positional[0]!, usual, date, io, null);
  if (!product) return exit.badInput;
  const pack = choosePack(product.record, parsed.text('pack'));
  const answer = draftTransport(product, pack);
  const { name, code } = product.record;
  io.out(
    parsed.flag('json')
      ? `${JSON.stringify(shipJson({ name, code }, pack.id, date, answer), null, 2)}\n`
      : `${shipText({ name, code }, pack.id, answer).join('\n')}\n`,
  );
  return answer.answer === 'undecided' ? exit.notMet : exit.done;
}
