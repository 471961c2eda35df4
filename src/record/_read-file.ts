import { dirname, isAbsolute, join } from 'node:path';
import { type Diagnostic, fail, type Outcome, type Position, succeed } from '../report/diagnostic.ts';
import { nearest } from '../report/nearest.ts';
import type { RecordEnv } from './files.ts';
import type { Places } from './places.ts';
import { readSource } from './source.ts';
import { type Parsed, parseYaml } from './yaml.ts';

export type RecordKind = 'product' | 'raw-material' | 'maker';

const kinds = ['product/1', 'raw-material/1', 'maker/1'];
const article = (kind: string): string => `a ${kind.replace('/1', '')} record`;

/**
 * Reads a file that another names, and sees that it holds the kind of record that is wanted. Of a file that is no
 * record nothing is shown: it may hold anything.
 * @returns the content; findings of a kind that is not known may accompany it.
 */
export function readRecordFile(
  path: string,
  kind: RecordKind,
  env: RecordEnv,
  at?: Position,
): Outcome<Parsed> {
  const source = readSource(path, env, at);
  if (!source.ok) return fail(...source.diagnostics.map(found => (at ? withoutExcerpt(found) : found)));
  const parsed = parseYaml(source.value, kind);
  const isRecord = /^\s*(?:\{\s*)?["']?labelwright["']?\s*:/m.test(source.value.text);
  if (at && !isRecord && !(!parsed.ok && parsed.diagnostics[0]?.code === 'empty-file'))
    return fail({
      code: 'missing-kind',
      severity: 'error',
      message: `\`${path}\` does not say that it is a record`,
      hint: `the record begins with \`labelwright: ${kind}/1\``,
      at: { file: path, line: 1, column: 1 },
    });
  return parsed.ok ? ofKind(parsed.value, kind) : parsed;
}

const withoutExcerpt = ({ excerpt: _, ...found }: Diagnostic): Diagnostic => found;

/**
 * A record as of the kind that is wanted. A kind that is not known is a finding and does not hide the others; a record
 * of another kind, or what is no record, is refused.
 */
export function ofKind(parsed: Parsed, kind: RecordKind): Outcome<Parsed> {
  const wrong = wrongKind(parsed.value, kind, parsed.places);
  if (!wrong) return succeed(parsed);
  if (wrong.stops) return fail(wrong.finding);
  const value = { ...(parsed.value as object), labelwright: `${kind}/1` };
  return succeed({ ...parsed, value }, [wrong.finding]);
}

interface WrongKind {
  readonly finding: Diagnostic;
  /** Nothing else in the record can be judged. */
  readonly stops: boolean;
}

function wrongKind(value: unknown, kind: RecordKind, places: Places): WrongKind | null {
  const wanted = `${kind}/1`;
  const begin = `the record begins with \`labelwright: ${wanted}\``;
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    const what = Array.isArray(value) ? 'a list' : 'plain text';
    return {
      finding: places.finding([], 'not-a-record', `this is ${what}, not a record`, begin),
      stops: true,
    };
  }
  const { labelwright: header, ...others } = value as Record<string, unknown>;
  if (header === wanted) return null;
  const looksLikeOne = 'name' in others;
  if (header === undefined) {
    const message = '`labelwright` is missing: the file does not say which kind of record it is';
    return { finding: places.finding([], 'missing-kind', message, begin), stops: !looksLikeOne };
  }
  const told = (code: string, message: string, hint?: string): Diagnostic =>
    places.finding(['labelwright'], code, message, hint);
  if (typeof header !== 'string')
    return {
      finding: told('wrong-kind', '`labelwright` does not name a kind of record', begin),
      stops: !looksLikeOne,
    };
  if (kinds.includes(header)) {
    const message = `this is ${article(header)}, where ${article(wanted)} is needed`;
    return { finding: told('wrong-kind', message), stops: true };
  }
  const [name, version] = header.split('/');
  if (version !== undefined && version !== '1' && kinds.includes(`${name}/1`)) {
    const message = `version ${version} of the record format is not known`;
    return { finding: told('unknown-version', message, begin), stops: true };
  }
  const near = nearest(header, kinds);
  const hint = near ? `did you mean \`${near}\`?` : begin;
  const message = `\`${header.slice(0, 40)}\` is not a kind of record`;
  return { finding: told('wrong-kind', message, hint), stops: !looksLikeOne };
}

/** A path named in a record, seen from where the record lies; null where it is not a relative path. */
export function resolvePath(named: string, from: string): string | null {
  const path = named.trim().replaceAll('\\', '/');
  if (isAbsolute(path) || /^[a-z][a-z+.-]*:/i.test(path)) return null;
  return join(dirname(from), path);
}
