import { fail, type Outcome, succeed } from '../report/diagnostic.ts';
import { Places } from './places.ts';
import { MAX_DEPTH, type Parsed, tooDeep } from './yaml.ts';

/** No record has a use for more values than this; a value that contains itself has no end. */
const MAX_VALUES = 200_000;

/**
 * A value that came without text, such as one parsed from JSON, in the form that the reader of files gives: numbers
 * as text, so that one set of rules reads both. Keys without a value are absent.
 */
export function plainValue(value: unknown, file: string): Outcome<Parsed> {
  let count = 0;
  let deep = false;
  const plain = (inner: unknown, depth: number): unknown => {
    count++;
    deep ||= depth > MAX_DEPTH || count > MAX_VALUES;
    if (deep) return null;
    if (typeof inner === 'number' || typeof inner === 'bigint') return String(inner);
    if (Array.isArray(inner)) return inner.map(item => plain(item, depth + 1));
    if (typeof inner === 'object' && inner !== null) {
      const made: [string, unknown][] = [];
      for (const [key, each] of Object.entries(inner))
        if (each !== undefined) made.push([key, plain(each, depth + 1)]);
      return Object.fromEntries(made);
    }
    return typeof inner === 'function' || typeof inner === 'symbol' ? null : inner;
  };
  const made = plain(value, 0);
  if (deep) return fail(tooDeep(file));
  return succeed({ value: made, raw: value, places: new Places(file, null), warnings: [] });
}

/**
 * Whether `JSON.parse` loses nothing of a text: no key is given twice in one group, and no number has digits that a
 * double cannot hold.
 * @param value what `JSON.parse` made of it.
 */
export function keepsAll(text: string, value: unknown): boolean {
  let keys = 0;
  const lossless = [...text.matchAll(/"(?:[^"\\]|\\.)*"(\s*:)?|-?\d[\d.eE+-]*/g)].every(([token, colon]) => {
    if (colon !== undefined) keys++;
    return token.startsWith('"') || String(Number(token)) === token;
  });
  return lossless && keys === keysOf(value);
}

function keysOf(value: unknown): number {
  if (typeof value !== 'object' || value === null) return 0;
  const inner = Object.values(value);
  return inner.reduce<number>((sum, each) => sum + keysOf(each), Array.isArray(value) ? 0 : inner.length);
}
