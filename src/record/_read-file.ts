import { dirname, isAbsolute, join } from 'node:path';
import { type Diagnostic, fail, type Outcome, type Position } from '../report/diagnostic.ts';
import { nearest } from '../report/nearest.ts';
import type { RecordEnv } from './files.ts';
import type { Places } from './places.ts';
import { readSource } from './source.ts';
import { type Parsed, parseYaml } from './yaml.ts';

export type RecordKind = 'product' | 'raw-material' | 'maker';

const kinds = ['product/1', 'raw-material/1', 'maker/1'];
const article = (kind: string): string => `a ${kind.replace('/1', '')} record`;

/** Reads a file and sees that it holds the kind of record that is wanted. */
export function readRecordFile(
  path: string,
  kind: RecordKind,
  env: RecordEnv,
  at?: Position,
): Outcome<Parsed> {
  const source = readSource(path, env, at);
  if (!source.ok) return source;
  const parsed = parseYaml(source.value);
  if (!parsed.ok) return parsed;
  const wrong = wrongKind(parsed.value.value, kind, parsed.value.places);
  return wrong ? fail(wrong) : parsed;
}

/** The finding that a record is of another kind than wanted, or null. */
export function wrongKind(value: unknown, kind: RecordKind, places: Places): Diagnostic | null {
  const wanted = `${kind}/1`;
  const begin = `the record begins with \`labelwright: ${wanted}\``;
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return places.finding(
      [],
      'not-a-record',
      `this is ${Array.isArray(value) ? 'a list' : 'plain text'}, not a record`,
      begin,
    );
  const header = (value as Record<string, unknown>).labelwright;
  if (header === wanted) return null;
  if (header === undefined)
    return places.finding(
      [],
      'missing-kind',
      '`labelwright` is missing: the file does not say which kind of record it is',
      begin,
    );
  if (typeof header !== 'string')
    return places.finding(
      ['labelwright'],
      'wrong-kind',
      '`labelwright` does not name a kind of record',
      begin,
    );
  if (kinds.includes(header))
    return places.finding(
      ['labelwright'],
      'wrong-kind',
      `this is ${article(header)}, where ${article(wanted)} is needed`,
    );
  const [name, version] = header.split('/');
  if (version !== undefined && version !== '1' && kinds.includes(`${name}/1`))
    return places.finding(
      ['labelwright'],
      'unknown-version',
      `version ${version} of the record format is not known`,
      begin,
    );
  const near = nearest(header, kinds);
  return places.finding(
    ['labelwright'],
    'wrong-kind',
    `\`${header.slice(0, 40)}\` is not a kind of record`,
    near ? `did you mean \`${near}\`?` : begin,
  );
}

/** A path named in a record, seen from where the record lies; null where it is not a relative path. */
export function resolvePath(named: string, from: string): string | null {
  const path = named.trim().replaceAll('\\', '/');
  if (isAbsolute(path) || /^[a-z][a-z+.-]*:/i.test(path)) return null;
  return join(dirname(from), path);
}
