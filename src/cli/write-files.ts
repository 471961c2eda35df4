import { dirname, join } from 'node:path';
import { nodeEnvironment } from '../environment/node.ts';
import { OutputError } from '../store/output-error.ts';

export { OutputError };

/** A file to be written, its name relative to the folder. */
export interface OutputFile {
  readonly name: string;
  readonly bytes: Uint8Array | string;
}

/**
 * Writes files of a person's own, such as starter records, whole or not at all: each is built beside its place first,
 * and only when all are there do they take their names. Documents go through the store instead.
 * @returns the paths written.
 * @throws OutputError where the folder cannot be written; what stood there before still stands.
 */
export function writeFiles(folder: string, written: readonly OutputFile[]): string[] {
  const { files, randomName } = nodeEnvironment;
  const staged: { temporary: string; path: string }[] = [];
  try {
    for (const { name, bytes } of written) {
      const path = join(folder, name);
      const temporary = join(dirname(path), `.labelwright-${randomName()}`);
      files.makeFolder(dirname(path));
      staged.push({ temporary, path });
      files.writeFile(temporary, typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes);
    }
    for (const { path } of staged)
      if (files.kind(path) === 'folder')
        throw Object.assign(new Error(`${path} is a folder`), { code: 'EISDIR' });
    for (const { temporary, path } of staged) files.rename(temporary, path);
  } catch (error) {
    for (const { temporary } of staged) files.remove(temporary);
    throw new OutputError(folder, error);
  }
  return staged.map(({ path }) => path);
}
