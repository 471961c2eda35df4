import type { Formula } from '../formula/constituent.ts';
import { nearest } from '../report/nearest.ts';

/** Index of a constituent by CAS number or name, exact but for case; or else what is near. */
export function findConstituent(
  { constituents }: Formula,
  written: string,
): { readonly index: number } | { readonly near: readonly string[] } {
  const word = fold(written);
  const index = constituents.findIndex(({ name, cas }) => cas === written.trim() || fold(name) === word);
  if (index >= 0) return { index };
  const names = constituents.flatMap(({ name, cas }) => (cas ? [name, cas] : [name]));
  const close = nearest(word, names.map(fold));
  const near = names.filter(name => fold(name) === close || fold(name).includes(word));
  return { near: [...new Set(near)] };
}

/** A name for comparing: case, spaces and underlines do not count. */
export const fold = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[_\s]+/g, '-');
