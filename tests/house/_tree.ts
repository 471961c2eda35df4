import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';

/** Every file below a folder whose name ends so, sorted; folders by other tools are left out. */
export const filesOf = (folder: string, ends = /./): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile() && ends.test(entry.name))
    .map(({ parentPath, name }) => join(parentPath, name))
    .sort();

export const textOf = (path: string): string => readFileSync(path, 'utf8');

/** One import or re-export of a source file. */
export interface Import {
  readonly from: string;
  /** Path of the file in the tree, or the name of a package. */
  readonly to: string;
  readonly relative: boolean;
  /** Types alone: nothing of it runs. */
  readonly typesOnly: boolean;
}

const STATEMENT = /^\s*(?:import|export)\s+(type\s+)?([^;'"]*?\sfrom\s*)?'([^']+)'/gm;
// A name that is put together at run time names no one file.
const CALL = /\bimport\('([^'$]+)'/g;

/** Imports of a source file, static and dynamic. */
export function importsOf(from: string): Import[] {
  const code = withoutComments(textOf(from));
  const make = (specifier: string, typesOnly: boolean): Import => {
    const relative = specifier.startsWith('.');
    return {
      from,
      to: relative ? normalize(join(dirname(from), specifier)) : specifier,
      relative,
      typesOnly,
    };
  };
  const named = (clause: string): string[] =>
    (/\{([^}]*)\}/.exec(clause)?.[1] ?? '')
      .split(',')
      .map(name => name.trim())
      .filter(Boolean);
  const typesAlone = (clause: string): boolean => {
    const names = named(clause);
    return names.length > 0 && /^\s*\{/.test(clause) && names.every(name => name.startsWith('type '));
  };
  return [
    ...[...code.matchAll(STATEMENT)].map(([, type, clause = '', specifier]) =>
      make(specifier!, Boolean(type) || typesAlone(clause)),
    ),
    ...[...code.matchAll(CALL)].map(([, specifier]) => make(specifier!, false)),
  ];
}

/** Code without its comments; strings keep theirs only where they look like one after a line start. */
export const withoutComments = (code: string): string =>
  code.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, '$1');

/** Folder below src/ of a source file; a file of src/ itself stands for itself. */
export const folderOf = (path: string): string => path.split('/')[1]!;

/** A circle in a graph as the names along it, or null. */
export function circle(graph: ReadonlyMap<string, ReadonlySet<string>>): string[] | null {
  const done = new Set<string>();
  const visit = (node: string, trail: readonly string[]): string[] | null => {
    const at = trail.indexOf(node);
    if (at >= 0) return [...trail.slice(at), node];
    if (done.has(node)) return null;
    for (const next of graph.get(node) ?? []) {
      const found = visit(next, [...trail, node]);
      if (found) return found;
    }
    done.add(node);
    return null;
  };
  for (const node of graph.keys()) {
    const found = visit(node, []);
    if (found) return found;
  }
  return null;
}
