import { type Dirent, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A folder that cannot be read, in words. */
export class FolderError extends Error {}

const kind = /^\s*(?:"labelwright"|labelwright)\s*:\s*["']?product\/1\b/m;
const left = new Set(['node_modules', 'out', '.git']);

/**
 * Product records below a folder, sorted: YAML and JSON files that say so of themselves.
 * @throws FolderError where the folder cannot be read
 */
export function productFiles(folder: string): string[] {
  let entries: Dirent[];
  try {
    entries = readdirSync(folder, { withFileTypes: true });
  } catch (error) {
    throw new FolderError(
      `cannot read the folder ${folder}: ${(error as NodeJS.ErrnoException).code ?? error}`,
    );
  }
  return entries
    .flatMap(entry => {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) return left.has(entry.name) ? [] : productFiles(path);
      if (!entry.isFile() || !/\.(ya?ml|json)$/i.test(entry.name)) return [];
      // The head tells; a JSON record has its braces and quotes before it.
      const head = readFileSync(path, 'utf8').replace(/^\ufeff?\s*\{/, '');
      return kind.test(head) ? [path] : [];
    })
    .sort();
}
