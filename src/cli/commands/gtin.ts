import { examineNumber, type NumberReport, stripSeparators } from '../../barcode/gtin.ts';
import { gtinText } from '../../barcode/gtin-text.ts';
import { type CommandUsage, type ParsedArguments, parseArguments, UsageError } from '../arguments.ts';
import { exit, type Io } from '../io.ts';

const usage: CommandUsage = {
  usage: 'gtin NUMBER… | - | --register DIR [--company-prefix P] [--complete] [--json]',
  options: { complete: 'flag', register: 'text', 'company-prefix': 'text', json: 'flag' },
  positional: [0, Number.POSITIVE_INFINITY],
};

/** Checks, completes and converts GTIN, UPC-E and SSCC numbers; returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, usage);
  const folder = parsed.text('register');
  if (folder !== null) return register(folder, parsed, io);
  if (parsed.text('company-prefix') !== null)
    throw new UsageError(`--company-prefix goes with --register\nusage: labelwright ${usage.usage}`);
  const numbers = await readNumbers(parsed.positional, io);
  if (numbers.length === 0) throw new UsageError(`no number given\nusage: labelwright ${usage.usage}`);
  const complete = parsed.flag('complete');
  const reports = numbers.map(number => examineNumber(number, { complete }));
  if (parsed.flag('json')) {
    io.out(`${JSON.stringify({ schema: 'labelwright/gtin/1', numbers: reports }, null, 2)}\n`);
  } else {
    for (const report of reports) {
      const write = report.problem === null ? io.out : io.err;
      write(`${gtinText(report).join('\n')}\n`);
    }
  }
  return Math.max(...reports.map(exitStatus));
}

/** Lists the numbers of all records of a folder. */
async function register(folder: string, parsed: ParsedArguments, io: Io): Promise<number> {
  const refuse = (message: string): never => {
    throw new UsageError(`${message}\nusage: labelwright ${usage.usage}`);
  };
  const prefix = parsed.text('company-prefix');
  if (prefix !== null && !/^\d{4,12}$/.test(prefix))
    refuse(`--company-prefix ${prefix} has not 4 to 12 digits`);
  if (parsed.positional.length > 0) refuse('--register takes no numbers');
  const { registerOf } = await import('../gtin-register.ts');
  return registerOf(folder, prefix, parsed.flag('json'), io);
}

/** Arguments, and the lines of standard input in place of `-`; groups of one number may stand apart. */
async function readNumbers(args: readonly string[], io: Io): Promise<string[]> {
  const numbers: string[] = [];
  for (const arg of args) {
    if (arg !== '-') numbers.push(arg);
    else numbers.push(...(await io.stdin()).split(/\r?\n/).filter(line => stripSeparators(line) !== ''));
  }
  return numbers;
}

const exitStatus = ({ problem }: NumberReport): number => {
  if (problem === null) return exit.done;
  return problem === 'check-digit' ? exit.notMet : exit.badInput;
};
