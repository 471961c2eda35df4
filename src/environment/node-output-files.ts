import {
  closeSync,
  existsSync,
  fsyncSync,
  linkSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmdirSync,
  rmSync,
  statSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { dirname, resolve } from 'node:path';
import type { OutputFiles } from './environment.ts';

const codeOf = (error: unknown): string => (error as NodeJS.ErrnoException).code ?? '';

/** What an action gives, or something else where nothing stands at its path. */
function absent<T>(otherwise: T, action: () => T): T {
  try {
    return action();
  } catch (error) {
    if (['ENOENT', 'ENOTDIR'].includes(codeOf(error))) return otherwise;
    throw error;
  }
}

/** What is done on an open file; it is closed whatever comes of it. */
function opened(path: string, flags: string, action: (file: number) => void): void {
  const file = openSync(path, flags);
  try {
    action(file);
  } finally {
    closeSync(file);
  }
}

/**
 * Level by level: where a file system refuses with ENOENT, the recursive form of Node tries for ever. Another run
 * may make the same folder at the same time.
 */
function makeFolder(folder: string): string | null {
  const found = statSync(folder, { throwIfNoEntry: false });
  if (found?.isDirectory()) return null;
  const above = !found && dirname(folder) !== folder ? makeFolder(dirname(folder)) : null;
  try {
    mkdirSync(folder);
  } catch (error) {
    if (codeOf(error) === 'EEXIST' && statSync(folder, { throwIfNoEntry: false })?.isDirectory())
      return above;
    throw error;
  }
  return above ?? folder;
}

/** The files of this computer, to write. */
export const nodeOutputFiles: OutputFiles = {
  kind: path => {
    const found = absent(null, () => statSync(path));
    if (!found) return null;
    if (found.isDirectory()) return 'folder';
    return found.isFile() ? 'file' : 'other';
  },
  read: path => absent(null, () => readFileSync(path)),
  list: folder => absent([], () => readdirSync(folder).sort()),
  makeFolder,
  writeFile: (path, bytes) =>
    opened(path, 'wx', file => {
      writeFileSync(file, bytes);
      fsyncSync(file);
    }),
  rename: (from, to) => renameSync(from, to),
  claim: (from, to) => {
    try {
      linkSync(from, to);
      unlinkSync(from);
      return true;
    } catch (error) {
      const taken = codeOf(error) === 'EEXIST' || existsSync(to);
      // A file system without hard links.
      if (taken) unlinkSync(from);
      else renameSync(from, to);
      return !taken;
    }
  },
  remove: path => rmSync(path, { recursive: true, force: true }),
  removeEmpty: folder => {
    try {
      rmdirSync(folder);
    } catch (error) {
      if (!['ENOTEMPTY', 'EEXIST', 'ENOENT'].includes(codeOf(error))) throw error;
    }
  },
  flushFolder: folder => {
    try {
      opened(folder, 'r', fsyncSync);
    } catch (error) {
      // Windows, and some file systems of networks, have no folders to flush.
      if (!['EISDIR', 'EPERM', 'EINVAL', 'ENOTSUP'].includes(codeOf(error))) throw error;
    }
  },
  realPath: path => {
    try {
      return realpathSync(path);
    } catch {
      return resolve(path);
    }
  },
};
