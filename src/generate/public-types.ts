import { writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { type Declared, exportedBy, namedIn } from './_declarations.ts';

/** Declarations of the type checker, as the build leaves them. */
const TYPES = join('out', 'dist', 'types');

/** Types of a library that the interface passes on: its own inner types stay its own. */
const isLent = ({ file }: Declared): boolean => file === join(TYPES, 'fraction.d.ts');

/**
 * Every type that the exports of src/index.ts name, directly or through another, and that it does not export by hand.
 * @param root the folder of the package, built
 * @throws Error where two files declare one name, so that a person must choose.
 */
export function publicTypes(root: string): readonly Declared[] {
  const folder = join(root, TYPES);
  const byHand = exportedBy(join(folder, 'index.d.ts'));
  const found = new Map<string, Declared>();
  const queue = [...byHand.values()];
  for (let next = queue.pop(); next; next = queue.pop()) {
    if (isLent({ ...next, file: relative(root, next.file) })) continue;
    for (const named of namedIn(next)) {
      const known = found.get(named.name);
      if (byHand.has(named.name) || known?.file === named.file) continue;
      if (known) throw new Error(`${named.name} is declared in ${known.file} and in ${named.file}`);
      found.set(named.name, named);
      queue.push(named);
    }
  }
  return [...found.values()].map(({ file, name }) => ({ name, file: relative(folder, file) }));
}

/** Text of src/public-types.ts. */
export function publicTypesText(types: readonly Declared[]): string {
  const files = [...new Set(types.map(({ file }) => file))].sort();
  const lines = files.map(file => {
    const names = types.filter(each => each.file === file).map(({ name }) => name);
    if (file === 'fraction.d.ts') return "export type { default as Fraction } from 'fraction.js';";
    return `export type { ${names.sort().join(', ')} } from './${file.replace(/\.d\.ts$/, '.ts')}';`;
  });
  return [
    '// Written by `npm run generate`: types that the exports of index.ts name. Do not edit.',
    ...lines,
    '',
  ].join('\n');
}

/** Writes src/public-types.ts. */
export function generatePublicTypes(root: string): void {
  writeFileSync(join(root, 'src', 'public-types.ts'), publicTypesText(publicTypes(root)));
}
