import { dirname, relative } from 'node:path';
import { type InputFile, type Sources, sha256 } from '../provenance/inputs.ts';
import type { RecordEnv } from '../record/files.ts';

/** Files that remember what was read of them. */
export interface ReadFiles {
  readonly files: RecordEnv;
  /** The record that was read, with the other files as seen from it. */
  sources(record: string): Sources;
}

/** Wraps a file system so that it remembers the hash of every file read. */
export function remembered(files: RecordEnv): ReadFiles {
  const read = new Map<string, string>();
  return {
    files: {
      ...files,
      readFile: path => {
        const bytes = files.readFile(path);
        read.set(path, sha256(bytes));
        return bytes;
      },
    },
    sources: record => {
      const seen = (path: string) => relative(dirname(record), path).replaceAll('\\', '/');
      const included = [...read]
        .filter(([path]) => path !== record)
        .map(([path, hash]): InputFile => ({ path: seen(path), sha256: hash }))
        .sort((a, b) => (a.path < b.path ? -1 : 1));
      return { record: { path: record, sha256: read.get(record) ?? '' }, included };
    },
  };
}
