import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';

/** A type and the file of declarations (`.d.ts`) that declares it. */
export interface Declared {
  readonly file: string;
  readonly name: string;
}

/** Without comments, and without strings that are no file names. */
const read = (file: string): string =>
  readFileSync(file, 'utf8')
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/\/\/.*$/gm, '')
    .replace(/'[^'\n]*'/g, text => (/^'\.{1,2}\//.test(text) ? text : "''"));

/** Names that a file takes from others or passes on, with the file and the name there. */
function links(file: string, keyword: 'import' | 'export'): Map<string, Declared> {
  const found = new Map<string, Declared>();
  const pattern = new RegExp(
    `^${keyword}\\s+(?:type\\s+)?(\\w+\\s*,?\\s*)?(?:\\{([^}]*)\\})?\\s*from '([^']+)'`,
    'gm',
  );
  for (const [, whole, list = '', specifier] of read(file).matchAll(pattern)) {
    const from = normalize(join(dirname(file), specifier!.replace(/\.[tj]s$/, '.d.ts')));
    const direct = whole?.replace(',', '').trim();
    if (direct) found.set(direct, { file: from, name: direct });
    for (const item of list.split(',')) {
      const [name, as = name] = item
        .replace(/^\s*type\s+/, '')
        .trim()
        .split(/\s+as\s+/);
      if (name) found.set(as!, { file: from, name });
    }
  }
  return found;
}

/** The text of a declaration up to where its brackets close; null where the file has none of that name. */
function declaration(file: string, name: string): string | null {
  const text = read(file);
  const kinds = 'interface|type|class|function|const|enum';
  const start = new RegExp(`^(?:export )?(?:declare )?(?:abstract )?(?:${kinds}) ${name}\\b`, 'm').exec(text);
  if (!start) return null;
  let depth = 0;
  for (let at = start.index; at < text.length; at++) {
    const sign = text[at]!;
    if ('{(['.includes(sign)) depth++;
    if ('})]'.includes(sign)) depth--;
    const closes =
      sign === ';' || (sign === '}' && /^\s*(export|declare|interface|type|$)/.test(text.slice(at + 1)));
    if (depth === 0 && closes) return text.slice(start.index, at + 1);
  }
  return text.slice(start.index);
}

/** Where a name is declared, through files that pass it on. */
function origin(named: Declared): Declared {
  const further = links(named.file, 'export').get(named.name);
  return further ? origin(further) : named;
}

/** What an interface exports by name, with the declaration behind it. */
export const exportedBy = (index: string): Map<string, Declared> =>
  new Map([...links(index, 'export')].map(([name, named]) => [name, origin(named)]));

/**
 * Types that a declaration names and that a file of the same tree declares.
 * @throws Error where the file has no such declaration.
 */
export function namedIn({ file, name }: Declared): readonly Declared[] {
  const text = declaration(file, name);
  if (text === null) throw new Error(`${file} does not declare ${name}`);
  const imported = links(file, 'import');
  const words = new Set(text.match(/\b[A-Z]\w*\b/g) ?? []);
  words.delete(name);
  return [...words].flatMap(word => {
    const from = imported.get(word);
    if (from) return existsSync(from.file) ? [origin(from)] : [];
    const local = declaration(file, word);
    if (local === null) return [];
    // A type that its file keeps to itself cannot be exported; what it names can.
    return /^export /.test(local) ? [{ file, name: word }] : namedIn({ file, name: word });
  });
}
