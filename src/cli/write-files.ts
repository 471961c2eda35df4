import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { exit, type Io } from './io.ts';

/** A file to be written, its name relative to the output folder. */
export interface OutputFile {
  readonly name: string;
  readonly bytes: Uint8Array | string;
}

/** An output folder that cannot be written, in words. */
export class OutputError extends Error {}

/**
 * Writes files whole or not at all: each is written beside its place first, and only when all are there do they
 * take their names.
 * @returns the paths written.
 * @throws OutputError where the folder cannot be written; what stood there before still stands.
 */
export function writeFiles(folder: string, files: readonly OutputFile[]): string[] {
  const staged: { temporary: string; path: string }[] = [];
  try {
    for (const { name, bytes } of files) {
      const path = join(folder, name);
      const temporary = `${path}.${process.pid}.part`;
      mkdirSync(dirname(path), { recursive: true });
      staged.push({ temporary, path });
      writeFileSync(temporary, bytes);
    }
    for (const { temporary, path } of staged) renameSync(temporary, path);
  } catch (error) {
    for (const { temporary } of staged) rmSync(temporary, { force: true });
    throw new OutputError(`cannot write to ${folder}: ${(error as NodeJS.ErrnoException).message}`);
  }
  return staged.map(({ path }) => path);
}

/** Writes files and prints where they are, as text or as JSON. Returns the exit status. */
export function writeOutput(folder: string, files: readonly OutputFile[], json: boolean, io: Io): number {
  try {
    const written = writeFiles(folder, files);
    io.out(json ? `${JSON.stringify({ schema: 'labelwright/files/1', files: written }, null, 2)}\n` : `${written.join('\n')}\n`);
    return exit.done;
  } catch (error) {
    if (!(error instanceof OutputError)) throw error;
    io.err(`${error.message}\n`);
    return exit.badInput;
  }
}
