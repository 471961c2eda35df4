import { mkdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { exit, type Io } from './io.ts';

/** A file to be written, its name relative to the output folder. */
export interface OutputFile {
  readonly name: string;
  readonly bytes: Uint8Array | string;
}

/** An output folder that cannot be written, in words. */
export class OutputError extends Error {
  constructor(folder: string, error: unknown) {
    const { code = '', message } = error as NodeJS.ErrnoException;
    super(`cannot write to ${folder}: ${reasons[code] ?? message}`);
  }
}

const reasons: Readonly<Record<string, string>> = {
  EEXIST: 'a file of that name is in the way; name a folder',
  ENOTDIR: 'a part of that path is a file, not a folder',
  EISDIR: 'a folder stands where a file is to be written',
  EACCES: 'you have no permission to write there',
  EPERM: 'you have no permission to write there',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  ENAMETOOLONG: 'the name is too long',
  ENOENT: 'no folder can be made there',
};

/**
 * Makes a folder with those above it. Level by level: where a file system refuses with ENOENT, the recursive
 * form of Node tries for ever.
 */
export function makeFolder(folder: string): void {
  const found = statSync(folder, { throwIfNoEntry: false });
  if (found?.isDirectory()) return;
  if (!found && dirname(folder) !== folder) makeFolder(dirname(folder));
  mkdirSync(folder);
}

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
      makeFolder(dirname(path));
      staged.push({ temporary, path });
      writeFileSync(temporary, bytes);
    }
    for (const { path } of staged) refuseFolder(path);
    for (const { temporary, path } of staged) renameSync(temporary, path);
  } catch (error) {
    for (const { temporary } of staged) rmSync(temporary, { force: true });
    throw new OutputError(folder, error);
  }
  return staged.map(({ path }) => path);
}

function refuseFolder(path: string): void {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found?.isDirectory()) throw Object.assign(new Error(`${path} is a folder`), { code: 'EISDIR' });
}

/** Writes files and prints where they are, as text or as JSON. Returns the exit status. */
export function writeOutput(folder: string, files: readonly OutputFile[], json: boolean, io: Io): number {
  try {
    const written = writeFiles(folder, files);
    io.out(
      json
        ? `${JSON.stringify({ schema: 'labelwright/files/1', files: written }, null, 2)}\n`
        : `${written.join('\n')}\n`,
    );
    return exit.done;
  } catch (error) {
    if (!(error instanceof OutputError)) throw error;
    io.err(`${error.message}\n`);
    return exit.badInput;
  }
}
