import { readFileSync, statSync } from 'node:fs';
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
};
