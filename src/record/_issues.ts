import type { Diagnostic } from '../report/diagnostic.ts';
import { nearest } from '../report/nearest.ts';
import { wantedOf } from './_leaf.ts';
import type * as z from './_zod.ts';
import { type Path, type Places, pathText } from './places.ts';

type Issue = z.core.$ZodIssue;

/** Turns the validator's issues into findings with place, offending text and fix. */
export function findingsOf(issues: readonly Issue[], value: unknown, places: Places): Diagnostic[] {
  return issues.flatMap(issue => findings(issue, [], value, places));
}

function findings(issue: Issue, base: Path, root: unknown, places: Places): Diagnostic[] {
  const path = [...base, ...issue.path] as Path;
  const found = at(root, path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map(key => unknownKey(key, path, wantedOf(issue.message)?.keys ?? [], places));
    case 'invalid_union': {
      const fitting = issue.errors.filter(option => !option.some(inner => isTypeMismatch(inner)));
      if (fitting.length > 0) return fitting[0]!.flatMap(inner => findings(inner, path, root, places));
      return [wrongType(innermost(issue), path, found, places)];
    }
    case 'custom': {
      const hint = issue.params?.hint as string | undefined;
      const code = (issue.params?.code as string | undefined) ?? 'bad-value';
      return [places.finding(path, code, named(path, issue.message), hint)];
    }
    case 'invalid_value': {
      const wanted = wantedOf(issue.message);
      const known = wanted?.keys ?? issue.values.map(String);
      if (typeof found !== 'string') return [wrongType(issue.message, path, found, places)];
      const near = nearest(found, known);
      const hint = near ? `did you mean \`${near}\`?` : `write one of ${known.join(', ')}`;
      return [places.finding(path, 'bad-value', `\`${last(path)}\` cannot be \`${shown(found)}\``, hint)];
    }
    default:
      return [wrongType(issue.message, path, found, places)];
  }
}

const isTypeMismatch = (issue: Issue): boolean =>
  issue.path.length === 0 &&
  (issue.code === 'invalid_type' ||
    (issue.code === 'invalid_union' && issue.errors.every(option => option.some(isTypeMismatch))));

// Where several types are possible and none is wanted more than another, the first is the usual one.
function innermost(issue: Issue): string {
  if (issue.code !== 'invalid_union' || wantedOf(issue.message)) return issue.message;
  return issue.errors[0]?.[0] ? innermost(issue.errors[0][0]) : issue.message;
}

function unknownKey(key: string, path: Path, known: readonly string[], places: Places): Diagnostic {
  const near = nearest(key, known);
  // `{pH: 9,5}` is a pH of 9 and a key 5.
  if (/^\d+\s*(%|[A-Za-z/]+)?$/.test(key))
    return places.finding(
      [...path, key],
      'unknown-key',
      `\`${shown(key)}\` is read as a key, because a comma stands before it`,
      'if it belongs to the number before it, write a decimal point: 9.5',
      { part: 'key' },
    );
  return places.finding(
    [...path, key],
    'unknown-key',
    `unknown key \`${shown(key)}\``,
    near
      ? `did you mean \`${near}\`?`
      : `known here: ${known.filter(name => name !== 'labelwright').join(', ')}`,
    { part: 'key' },
  );
}

function wrongType(message: string, path: Path, found: unknown, places: Places): Diagnostic {
  const wanted = wantedOf(message);
  const key = last(path);
  const example = wanted?.example
    ? `${typeof key === 'string' && !/^\[/.test(key) ? `${key}: ` : ''}${wanted.example}`
    : null;
  if (found === undefined)
    return places.finding(
      path,
      'missing-key',
      `\`${pathText(path)}\` is missing`,
      example ? `add for example \`${example}\`` : wanted ? `give ${wanted.what}` : undefined,
    );
  if (found === null)
    return places.finding(
      path,
      'empty-value',
      `\`${pathText(path) || 'the record'}\` is empty`,
      example ? `write for example \`${example}\`, or remove the key` : 'give a value, or remove the key',
    );
  const code = 'wrong-type';
  if (!wanted)
    return places.finding(path, code, `\`${pathText(path)}\` has a value that is not possible here`);
  const sentence = wanted.example === undefined ? null : cutByColon(found);
  if (sentence !== null)
    return places.finding(
      path,
      code,
      `\`${pathText(path)}\` is read as a key and its value, because a colon stands in the text`,
      `put the whole text in quotes: "${sentence}"`,
    );
  const subject = path.length === 0 ? 'the file' : `\`${pathText(path)}\``;
  return places.finding(
    path,
    code,
    `${subject} must be ${wanted.what}, not ${kindOf(found)}`,
    wanted.hint ?? (example ? `write for example \`${example}\`` : keysOf(wanted)),
  );
}

const keysOf = ({ keys }: { readonly keys?: readonly string[] }): string | undefined =>
  keys && `write it with its keys: ${keys.join(', ')}`;

/** The text that YAML took apart at `: `; null where the group is one. */
function cutByColon(found: unknown): string | null {
  if (typeof found !== 'object' || found === null || Array.isArray(found)) return null;
  const [pair, ...more] = Object.entries(found);
  if (!pair || more.length > 0 || typeof pair[1] !== 'string' || !/[\s(]/.test(pair[0])) return null;
  return shown(`${pair[0]}: ${pair[1]}`).replaceAll('"', '\\"');
}

const named = (path: Path, message: string): string => {
  const key = last(path);
  return key === '' || message.toLowerCase().includes(key.toLowerCase()) || typeof path.at(-1) === 'number'
    ? message
    : `\`${key}\`: ${message}`;
};

const last = (path: Path): string => {
  const key = path.at(-1);
  return typeof key === 'number' ? pathText(path.slice(-2)) : (key ?? '');
};

function kindOf(value: unknown): string {
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : 'a list';
  if (typeof value === 'object') return 'a group of keys';
  if (typeof value === 'boolean') return `\`${value}\``;
  return `\`${shown(String(value))}\``;
}

const shown = (text: string): string => {
  const flat = text.replace(/\s+/g, ' ');
  return flat.length > 60 ? `${flat.slice(0, 59)}…` : flat;
};

function at(root: unknown, path: Path): unknown {
  let value = root;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<string | number, unknown>)[key];
  }
  return value;
}
