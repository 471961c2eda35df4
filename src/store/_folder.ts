import { dirname, join, relative, resolve } from 'node:path';
import type { OutputFiles } from '../environment/environment.ts';
import { sha256 } from '../provenance/inputs.ts';
import type { OutputFact } from './facts.ts';
import { MANIFEST, type Manifest, parseManifest } from './manifest.ts';
import { OutputError } from './output-error.ts';

/** Everything of ours that is not there to stay begins so; the rest of the name is drawn by chance. */
export const TEMPORARY = '.labelwright-';

/** Name of the lock of a folder. */
export const LOCK = '.labelwright.lock';

/** The hash of a file of a folder; null where there is none. */
export function hashAt(files: OutputFiles, folder: string, name: string): string | null {
  const path = join(folder, name);
  if (files.kind(path) === 'folder')
    throw Object.assign(new Error(`${path} is a folder`), { code: 'EISDIR' });
  const bytes = files.read(path);
  return bytes && sha256(bytes);
}

/** The manifest of a folder; null where there is none, `unreadable` where a file of that name is no manifest. */
export function readManifest(files: OutputFiles, folder: string): Manifest | 'unreadable' | null {
  const path = join(folder, MANIFEST);
  if (files.kind(path) === 'folder') return 'unreadable';
  const bytes = files.read(path);
  return bytes && (parseManifest(bytes) ?? 'unreadable');
}

/**
 * Something that only reads a folder.
 * @throws OutputError where the folder cannot be read
 */
export function reading<T>(folder: string, action: () => T): T {
  try {
    return action();
  } catch (error) {
    if (typeof (error as NodeJS.ErrnoException).code !== 'string') throw error;
    throw new OutputError(folder, error, 'read');
  }
}

/** The path of a record as seen from a folder, with `/`, links resolved: both can be moved together. */
export const recordSeenFrom = (files: OutputFiles, folder: string, record: string): string =>
  relative(files.realPath(folder), files.realPath(record)).replaceAll('\\', '/');

/** Where the record of a manifest lies. */
export const recordOf = (files: OutputFiles, folder: string, { inputs }: Manifest): string =>
  files.realPath(resolve(files.realPath(folder), inputs.record.path));

/**
 * Whether a manifest is of a record. One that lay elsewhere and is no longer there was moved; one with another code
 * is another product.
 */
export function isOfRecord(
  files: OutputFiles,
  folder: string,
  manifest: Manifest,
  record: string,
  code: string,
): boolean {
  if (manifest.product.code !== code) return false;
  const known = recordOf(files, folder, manifest);
  return known === files.realPath(record) || files.kind(known) === null;
}

/** That a folder belongs to another record: where that lies, as seen from where the folder is named. */
export const otherRecord = (folder: string, { inputs, product }: Manifest): OutputFact => ({
  id: 'other-record',
  record: join(folder, inputs.record.path),
  code: product.code,
});

/** Removes folders that were made for nothing, from the innermost up to the topmost that was made. */
export function removeEmptyFolders(files: OutputFiles, innermost: string, topmost: string | null): void {
  if (topmost === null) return;
  for (let folder = innermost; ; folder = dirname(folder)) {
    files.removeEmpty(folder);
    if (folder === topmost || dirname(folder) === folder) return;
  }
}
