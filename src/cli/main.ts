import { HelpRequest, UsageError } from './arguments.ts';
import { exit, type Io } from './io.ts';
import { OutputError } from './write-files.ts';

type Run = (args: readonly string[], io: Io) => Promise<number>;

/** Commands are loaded when called, so that a small one starts without fonts, PDF code or tables. */
const commands: Readonly<Record<string, { readonly does: string; load(): Promise<{ run: Run }> }>> = {
  init: { does: 'writes a starter record with comments', load: () => import('./commands/init.ts') },
  check: {
    does: 'reads and validates records, expands the formula, reports unknowns',
    load: () => import('./commands/check.ts'),
  },
  classify: {
    does: 'classifies the mixture and gives the reasons',
    load: () => import('./commands/classify.ts'),
  },
  headroom: {
    does: 'how much of one constituent until the label changes',
    load: () => import('./commands/headroom.ts'),
  },
  label: {
    does: 'drafts the label of a pack as a print-ready PDF',
    load: () => import('./commands/label.ts'),
  },
  sds: {
    does: 'drafts the safety data sheet as PDF, HTML and JSON',
    load: () => import('./commands/sds.ts'),
  },
  gtin: { does: 'checks, completes and converts article numbers', load: () => import('./commands/gtin.ts') },
  case: {
    does: 'drafts case and pallet labels for a roll printer',
    load: () => import('./commands/case.ts'),
  },
  reel: {
    does: 'works out label, roll and order for the labeler',
    load: () => import('./commands/reel.ts'),
  },
  packet: {
    does: 'makes everything for one product, with an index page',
    load: () => import('./commands/packet.ts'),
  },
};

function help(): string {
  const width = Math.max(...Object.keys(commands).map(name => name.length));
  const rows = Object.entries(commands).map(([name, { does }]) => `  ${name.padEnd(width)}  ${does}`);
  return `labelwright COMMAND [RECORD …] [--out DIR] [--json] [--as-of YYYY-MM-DD]\n\n${rows.join('\n')}\n\nlabelwright COMMAND --help gives the options of a command; labelwright --version, the version.\nDrafts for qualified review; labelwright approves nothing.\nExit status: 0 done, 1 a stated requirement is not met, 2 wrong input or call, 70 a defect of ours.\n`;
}

const io: Io = {
  stdin: async () => {
    const chunks: Buffer[] = [];
    for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
    return Buffer.concat(chunks).toString('utf8');
  },
  lines: async function* () {
    const { createInterface } = await import('node:readline');
    yield* createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY });
  },
  out: text => void process.stdout.write(text),
  err: text => void process.stderr.write(text),
  today: localDate(new Date()),
};

function localDate(date: Date): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

async function main([name, ...args]: readonly string[]): Promise<number> {
  if (name === undefined) {
    io.err(help());
    return exit.badInput;
  }
  if (name === 'help' && args.length > 0) return main([args[0]!, '--help']);
  if (['help', '--help', '-h'].includes(name)) {
    io.out(help());
    return exit.done;
  }
  if (name === '--version') {
    const { VERSION } = await import('../version.ts');
    io.out(`labelwright ${VERSION}\n`);
    return exit.done;
  }
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (!command) {
    io.err(`${await unknownCommand(name)}\nlabelwright --help lists the commands\n`);
    return exit.badInput;
  }
  const { run } = await command.load();
  return run(args, io);
}

async function unknownCommand(name: string): Promise<string> {
  if (/\.(ya?ml|json)$/i.test(name)) return `a command comes before the record: labelwright check ${name}`;
  if (name.startsWith('-')) return `a command comes before its options: ${name}`;
  const { nearest } = await import('../report/nearest.ts');
  const near = nearest(name, Object.keys(commands));
  return `unknown command ${name}${near ? `; did you mean ${near}?` : ''}`;
}

// A reader that closes early, such as `head`, is no defect.
for (const stream of [process.stdout, process.stderr])
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(exit.done);
    throw error;
  });

main(process.argv.slice(2)).then(
  status => {
    process.exitCode = status;
  },
  (error: unknown) => {
    if (error instanceof HelpRequest) {
      io.out(`${error.message}\n`);
      return;
    }
    if (error instanceof UsageError || error instanceof OutputError) {
      io.err(`${error.message}\n`);
      process.exitCode = exit.badInput;
      return;
    }
    io.err(
      `a defect in labelwright: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`,
    );
    process.exitCode = exit.defect;
  },
);
