import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

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
