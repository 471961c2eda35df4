import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliDecompressSync } from 'node:zlib';

let root: string | null = null;

/** The folder of this package, from the source tree as from the bundle. */
export function packageRoot(): string {
  if (root) return root;
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'hazard-data', 'units.json'))) {
    const parent = dirname(folder);
    if (parent === folder) throw new Error('the hazard-data folder of the package is missing');
    folder = parent;
  }
  root = folder;
  return folder;
}

/** The path of a file that ships with the package, for example `hazard-data/substances/harmonised.tsv`. */
export const packagePath = (...parts: readonly string[]): string => join(packageRoot(), ...parts);

/** The bytes of a file that ships with the package. Tables are in the source tree as they are, in the package packed. */
export function readPackageFile(...parts: readonly string[]): Buffer {
  const path = packagePath(...parts);
  return existsSync(path)
    ? readFileSync(path)
    : brotliDecompressSync(readFileSync(packagePath('out', 'dist', `${join(...parts)}.br`)));
}

/** Paths from the root of the package of all files below one of its folders, with slashes, sorted. */
export const packageFilesBelow = (folder: string): readonly string[] =>
  readdirSync(packagePath(folder), { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name).slice(packageRoot().length + 1))
    .map(path => path.replaceAll('\\', '/'))
    .sort();

/** The text of a file of the package below `templates/`. */
export const readTemplate = (path: string): Promise<string> =>
  readFile(packagePath('templates', path), 'utf8');

/** Whether this is the source tree, with its law data beside the program. */
export const isSourceTree = (): boolean => existsSync(packagePath('hazard-data', 'hazard-classes.json'));
