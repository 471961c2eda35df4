import { readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import type { FileStat, RecordEnv } from '../record/files.ts';

const reasons: Readonly<Record<string, string>> = {
  EACCES: 'you have no permission to read it',
  EPERM: 'you have no permission to read it',
  ELOOP: 'its links lead in a circle',
  ENAMETOOLONG: 'its name is too long',
};

/** The files of this computer. */
export const nodeFiles: RecordEnv = {
  statFile: (path): FileStat => {
    try {
      const stat = statSync(path);
      if (stat.isDirectory()) return { kind: 'directory' };
      if (!stat.isFile()) return { kind: 'unreadable', reason: 'it is not an ordinary file' };
      return { kind: 'file', bytes: stat.size };
    } catch (error) {
      const { code = '', message } = error as NodeJS.ErrnoException;
      if (code === 'ENOENT' || code === 'ENOTDIR') return { kind: 'missing' };
      return { kind: 'unreadable', reason: reasons[code] ?? message };
    }
  },
  readFile: path => readFileSync(path),
  realPath: path => realPath(resolve(path)),
  listFiles: folder => filesBelow(folder).sort(),
};

/** The files of this computer; records may name makers and raw materials in these folders too. */
export const filesAllowing = (allow: readonly string[]): RecordEnv => ({ ...nodeFiles, allow });

/** What is not looked into for records: what programs keep, and what is made from records. */
const skipped = /^(?:\.|node_modules$|out$)/;

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap(entry => {
    if (skipped.test(entry.name)) return [];
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return filesBelow(path);
    return entry.isFile() ? [path] : [];
  });
}

// Where nothing stands, the folders above are resolved.
function realPath(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    return dirname(path) === path ? path : join(realPath(dirname(path)), basename(path));
  }
}
