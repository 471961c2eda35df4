import { basename, dirname, join } from 'node:path';
import type { Environment } from '../environment/environment.ts';
import { TEMPORARY } from './_folder.ts';
import { OutputError } from './output-error.ts';

/**
 * Writes a file that belongs to a person from then on: only where none of its name stands, and whole or not at all.
 * @returns whether it was written.
 * @throws OutputError where it cannot be written
 */
export function putOnce(path: string, text: string, { files, randomName }: Environment): boolean {
  const folder = dirname(path);
  const prefix = `${TEMPORARY}${basename(path)}-`;
  const attempt = (): boolean => {
    for (const name of files.list(folder).filter(each => each.startsWith(prefix)))
      files.remove(join(folder, name));
    if (files.kind(path) !== null) return false;
    const temporary = join(folder, `${prefix}${randomName()}`);
    files.writeFile(temporary, new TextEncoder().encode(text));
    const written = files.claim(temporary, path);
    files.flushFolder(folder);
    return written;
  };
  try {
    return attempt();
  } catch (error) {
    // Another run for the same record took this one's file for that of a killed run.
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw new OutputError(folder, error);
  }
  try {
    return attempt();
  } catch (error) {
    throw new OutputError(folder, error);
  }
}
