// Types of the public interface: of what the type checker writes, those files alone that src/index.ts leads to.
import { copyFileSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, normalize, relative } from 'node:path';

const specifiers = /(?:from |import\()(['"])([^'"]+)\1/g;

/** Types of packages that the interface passes on; they are copied, so that a user needs no further package. */
const lent = { 'fraction.js': 'node_modules/fraction.js/fraction.d.mts' };

/** Takes out what cannot be reached, and brings in what is lent. A type of any other package stops the build. */
export function pruneDeclarations(folder) {
  const kept = new Set();
  const follow = path => {
    if (kept.has(path)) return;
    kept.add(path);
    let text = readFileSync(path, 'utf8');
    for (const [, , name] of text.matchAll(specifiers)) {
      if (name.startsWith('.')) {
        follow(normalize(join(dirname(path), name.replace(/\.[tj]s$/, '.d.ts'))));
      } else if (lent[name]) {
        const copy = join(folder, `${name.replace(/\.js$/, '')}.d.ts`);
        copyFileSync(lent[name], copy);
        kept.add(normalize(copy));
        const from = relative(dirname(path), copy).replace(/\.d\.ts$/, '.js');
        text = text.replaceAll(`'${name}'`, `'${from.startsWith('.') ? from : `./${from}`}'`);
      } else if (!name.startsWith('node:')) {
        throw new Error(`${path} leads to the types of ${name}`);
      }
    }
    writeFileSync(path, text);
  };
  follow(normalize(join(folder, 'index.d.ts')));
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    const path = normalize(join(entry.parentPath, entry.name));
    if (entry.isFile() && !kept.has(path)) rmSync(path);
  }
}
