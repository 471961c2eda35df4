import { nodeFiles } from './files.ts';
import { exit, type Io } from './io.ts';
import { readLines } from './read-lines.ts';

/** Standard input, standard output and messages of this process, and the date of its clock. */
export const processIo = (): Io => ({
  stdin: async () => {
    const chunks: Buffer[] = [];
    for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
    return Buffer.concat(chunks).toString('utf8');
  },
  lines: () => readLines(process.stdin),
  out: text => {
    if (process.stdout.write(text)) return;
    return new Promise(resolve => process.stdout.once('drain', resolve));
  },
  err: text => void process.stderr.write(text),
  files: nodeFiles,
  today: localDate(new Date()),
});

function localDate(date: Date): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

const reasons: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EIO: 'the device fails',
  EFBIG: 'the file would be too large',
};

/** Ends the process when nobody reads on, such as `head`: quietly; or when nothing can be written: with a sentence. */
export function endWithOutput(): void {
  process.stdout.on('error', ({ code = '', message }: NodeJS.ErrnoException) => {
    if (code === 'EPIPE') process.exit(exit.done);
    process.stderr.write(`cannot write to standard output: ${reasons[code] ?? message}\n`, () =>
      process.exit(exit.badInput),
    );
  });
  process.stderr.on('error', ({ code }: NodeJS.ErrnoException) =>
    process.exit(code === 'EPIPE' ? exit.done : exit.badInput),
  );
}
