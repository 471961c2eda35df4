import { examineNumber, type NumberReport, stripSeparators } from '../../barcode/gtin.ts';
import { gtinText } from '../../barcode/gtin-text.ts';
import { parseArguments, UsageError } from '../arguments.ts';
import type { Command } from '../command.ts';
import { exit, type Io } from '../io.ts';
import { json } from '../options.ts';

/** The command as data. */
export const command: Command = {
  name: 'gtin',
  does: 'checks, completes and converts GTIN-8, 12, 13 and 14, UPC-E and SSCC',
  place: 70,
  argument: {
    name: 'NUMBER',
    does: 'numbers, with or without spaces and dashes; - reads them from standard input, one a line',
    count: 'many',
    completes: [],
  },
  options: { complete: { kind: 'flag', does: 'adds the check digit that is missing' }, json },
  examples: [
    { call: 'gtin 0614141000418', does: 'whether its check digit is right, and its other forms' },
    { call: 'gtin 629104150021 --complete', does: 'the number with its check digit' },
  ],
  run,
};

/** Checks, completes and converts GTIN, UPC-E and SSCC numbers; returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
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
