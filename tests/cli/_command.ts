import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll } from 'vitest';
import { UsageError } from '../../src/cli/arguments.ts';
import type { Io } from '../../src/cli/io.ts';
import { OutputError } from '../../src/store/output-error.ts';

/** The built command, as `npm run build` leaves it. */
export const main: string = resolve('out/dist/cli/main.js');

/** The day on which the tests classify, so that no result changes with the calendar. */
export const TODAY = '2026-11-25';

export interface Result {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the built command in a folder, as a user does. */
export function labelwright(
  args: readonly string[],
  { cwd = '.', input = '', env = {} }: { cwd?: string; input?: string; env?: Record<string, string> } = {},
): Result {
  const { status, stdout, stderr } = spawnSync(process.execPath, [main, ...args], {
    cwd,
    input,
    env: { ...process.env, ...env },
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  return { status, out: stdout, err: stderr };
}

type Run = (args: readonly string[], io: Io) => Promise<number>;

/** Runs one command within this process; a wrong call gives what the terminal would show. */
export async function inProcess(run: Run, args: readonly string[], input = ''): Promise<Result> {
  let [out, err] = ['', ''];
  const io: Io = {
    stdin: async () => input,
    lines: async function* () {
      yield* input.split('\n');
    },
    out: text => {
      out += text;
    },
    err: text => {
      err += text;
    },
    today: TODAY,
  };
  try {
    return { status: await run(args, io), out, err };
  } catch (error) {
    if (!(error instanceof UsageError || error instanceof OutputError)) throw error;
    return { status: 2, out, err: `${err}${error.message}\n` };
  }
}

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

/** A folder of its own with the demo records in it; it goes when the tests of the file are done. */
export function workshop(): string {
  const folder = mkdtempSync(join(tmpdir(), 'labelwright-'));
  folders.push(folder);
  cpSync('templates/demo', folder, { recursive: true });
  return folder;
}

export const demo: string = readFileSync('templates/demo/patio-cleaner.yaml', 'utf8');

/** The demo record with pieces of its text replaced; each piece must be there. */
export function demoWith(...changes: readonly (readonly [string, string])[]): string {
  let text = demo;
  for (const [from, to] of changes) {
    if (!text.includes(from)) throw new Error(`not in the demo record: ${from}`);
    text = text.replace(from, () => to);
  }
  return text;
}

/** Writes a record into a folder and returns its path. */
export function put(folder: string, name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

/** Every file below a folder, relative and sorted. */
export const filesBelow = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name).slice(folder.length + 1))
    .sort();

/** A terminal shows messages, not the inside of the program. */
export const stackTrace = /\n\s+at |node:internal|file:\/\/|defect in labelwright/;
