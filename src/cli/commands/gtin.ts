import { examineNumber, type NumberReport, stripSeparators } from '../../barcode/gtin.ts';
import { gtinText } from '../../barcode/gtin-text.ts';
import { type ParsedArguments, parseArguments, UsageError } from '../arguments.ts';
import type { Command } from '../command.ts';
import { exit, type Io } from '../io.ts';
import { json } from '../options.ts';

/** The command as data. */
export const command: Command = {
  name: 'gtin',
  does: 'checks, completes and converts GTIN-8, 12, 13 and 14, UPC-E and SSCC; lists the numbers of a folder',
  place: 70,
  argument: {
    name: 'NUMBER',
    does: 'numbers, with or without spaces and dashes; - reads them from standard input, one a line',
    count: 'any',
    completes: [],
  },
  options: {
    complete: { kind: 'flag', does: 'adds the check digit that is missing' },
    register: {
      kind: 'text',
      value: 'DIR',
      does: 'numbers of all records of a folder: used, used twice, free, and those of cases',
      completes: 'folder',
    },
    'company-prefix': {
      kind: 'text',
      value: 'P',
      does: 'GS1 company prefix that free numbers are told for, with --register',
    },
    json,
  },
  examples: [
    { call: 'gtin 0614141000418', does: 'whether its check digit is right, and its other forms' },
    { call: 'gtin 629104150021 --complete', does: 'the number with its check digit' },
    { call: 'gtin --register . --company-prefix 0614141', does: 'numbers used here, and the next free ones' },
  ],
  run,
};

/** Checks, completes and converts GTIN, UPC-E and SSCC numbers; returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const folder = parsed.text('register');
  if (folder !== null) return register(folder, parsed, io);
  if (parsed.text('company-prefix') !== null)
    throw new UsageError('--company-prefix goes with --register', command);
  const numbers = await readNumbers(parsed.positional, io);
  if (numbers.length === 0) throw new UsageError('no number given', command);
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
    throw new UsageError(message, command);
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
