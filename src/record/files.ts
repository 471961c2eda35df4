/** What stands at a path. */
export type FileStat =
  | { readonly kind: 'file'; readonly bytes: number }
  | { readonly kind: 'directory' }
  | { readonly kind: 'missing' }
  | { readonly kind: 'unreadable'; readonly reason: string };

/** The file system as records see it. Paths are those that the caller gives, or relative to them. */
export interface RecordEnv {
  statFile(path: string): FileStat;
  /** May throw; the reason then becomes a finding. */
  readFile(path: string): Uint8Array;
  /** The path with every link resolved, also where nothing stands there; absent where there are no links. */
  realPath?(path: string): string;
  /** Paths of all files below a folder; absent where folders cannot be listed. */
  listFiles?(folder: string): readonly string[];
  /** Folders besides that of the record from which it may take makers and raw materials. */
  readonly allow?: readonly string[];
}

/** No files at all: for records whose maker and raw materials are written inline. */
export const noFiles: RecordEnv = {
  statFile: () => ({ kind: 'missing' }),
  readFile: path => {
    throw new Error(`no file ${path}`);
  },
};

/** Files held in memory, by path. */
export function memoryFiles(files: Readonly<Record<string, string | Uint8Array>>): RecordEnv {
  const bytes = new Map(
    Object.entries(files).map(([path, content]) => [
      path,
      typeof content === 'string' ? new TextEncoder().encode(content) : content,
    ]),
  );
  return {
    statFile: path => {
      const found = bytes.get(path);
      if (found) return { kind: 'file', bytes: found.length };
      const folder = [...bytes.keys()].some(key => key.startsWith(`${path}/`));
      return { kind: folder ? 'directory' : 'missing' };
    },
    listFiles: folder => {
      const inside = folder === '.' || folder === '' ? '' : `${folder.replace(/\/+$/, '')}/`;
      return [...bytes.keys()].filter(path => path.startsWith(inside)).sort();
    },
    readFile: path => {
      const found = bytes.get(path);
      if (!found) throw new Error(`no file ${path}`);
      return found;
    },
  };
}
