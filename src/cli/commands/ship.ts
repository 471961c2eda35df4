import { draftTransport } from '../../draft/draft-transport.ts';
import { shipJson } from '../../draft/ship-json.ts';
import { shipText } from '../../draft/ship-text.ts';
import { type CommandUsage, parseArguments } from '../arguments.ts';
import { choosePack } from '../choose-pack.ts';
import { openClassified } from '../draft.ts';
import { exit, type Io } from '../io.ts';

const usage: CommandUsage = {
  usage: 'ship RECORD --pack ID [--json] [--as-of YYYY-MM-DD]',
  options: { pack: 'text', json: 'flag', 'as-of': 'date' },
  positional: [1, 1],
};

/** The transport description of a pack and its packing limits. Returns the exit status: 1 where data are missing. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, usage);
  const asOf = parsed.text('as-of') ?? io.today;
  const product = await openClassified(parsed.positional[0]!, 'us-hcs', asOf, io);
  if (!product) return exit.badInput;
  const pack = choosePack(product.record, parsed.text('pack'));
  const answer = draftTransport(product, pack);
  const { name, code } = product.record;
  io.out(
    parsed.flag('json')
      ? `${JSON.stringify(shipJson({ name, code }, pack.id, asOf, answer), null, 2)}\n`
      : `${shipText({ name, code }, pack.id, answer).join('\n')}\n`,
  );
  return answer.answer === 'undecided' ? exit.notMet : exit.done;
}
