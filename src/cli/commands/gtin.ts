import { examineNumber, type NumberReport, stripSeparators } from '../../barcode/gtin.ts';
import { gtinText } from '../../barcode/gtin-text.ts';

interface Io {
  stdin(): Promise<string>;
  out(text: string): void;
  err(text: string): void;
}

const USAGE = 'usage: labelwright gtin NUMBER… | - [--complete] [--json]';

/** Checks, completes and converts GTIN, UPC-E and SSCC numbers; returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const options = args.filter(arg => arg.startsWith('--'));
  const unknown = options.find(option => option !== '--complete' && option !== '--json');
  if (unknown) return refuse(io, `unknown option ${unknown}`);
  const numbers = await readNumbers(
    args.filter(arg => !arg.startsWith('--')),
    io,
  );
  if (numbers.length === 0) return refuse(io, 'no number given');
  const complete = options.includes('--complete');
  const reports = numbers.map(number => examineNumber(number, { complete }));
  if (options.includes('--json')) {
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
  if (problem === null) return 0;
  return problem === 'check-digit' ? 1 : 2;
};

function refuse(io: Io, message: string): number {
  io.err(`${message}\n${USAGE}\n`);
  return 2;
}
