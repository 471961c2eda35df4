import type { Scalar } from 'yaml';
import type { Path } from './places.ts';

/** A place where YAML reads less, or in more pieces, than a person who fills in a record means. */
export interface Swallowed {
  readonly offset: number;
  readonly message: string;
  readonly hint: string;
}

/** Lists whose items are words of a notation, not sentences. */
const notations: ReadonlySet<unknown> = new Set([
  'hazards',
  'limits',
  'unknown',
  'claim',
  'markets',
  'users',
]);

const isPlainText = (node: unknown): node is Scalar<string> & { range: [number, number, number] } =>
  typeof node === 'object' &&
  node !== null &&
  (node as Scalar).type === 'PLAIN' &&
  typeof (node as Scalar).value === 'string' &&
  Array.isArray((node as Scalar).range);

const quoted = (text: string): string => `"${text.replaceAll('"', '\\"')}"`;

/** Text behind ` #` that was meant as text: `Cleaner #5`. A comment has a space behind its sign. */
export function cutByComment(node: unknown, text: string): Swallowed | null {
  if (!isPlainText(node)) return null;
  const end = node.range[1];
  const rest = text.slice(end).split('\n', 1)[0]!.trimEnd();
  const match = /^ (#(?:[^\s#!=-]| ?\d).*?)(?:\s+# .*)?$/.exec(rest);
  if (!match) return null;
  return {
    offset: end + 1,
    message: `\`${match[1]}\` is read as a comment: the text ends before it`,
    hint: `put the whole text in quotes, ${quoted(`${node.value} ${match[1]}`)}, or write a space behind the # of a comment`,
  };
}

/** An item of `[a, b]` that looks like the rest of the sentence before its comma. */
export function cutByComma(before: unknown, item: unknown, path: Path): Swallowed | null {
  if (!isPlainText(before) || !isPlainText(item) || notations.has(path.at(-1))) return null;
  // Words for a statement are phrases: `[dry chemical, CO2, alcohol-resistant foam]`.
  if (path.at(-2) === 'words') return null;
  const [first, rest] = [before.value.trim(), item.value.trim()];
  if (!/^\p{Lu}/u.test(first) || /[.!?:]$/.test(first)) return null;
  if (!/^\p{Ll}/u.test(rest) || !/[\s.]/.test(rest)) return null;
  return {
    offset: item.range[0],
    message: `\`${rest}\` is read as an item of its own, because a comma stands before it`,
    hint: `if it is one sentence, put it in quotes: ${quoted(`${first}, ${rest}`)}; or write one item a line, each behind a hyphen`,
  };
}
