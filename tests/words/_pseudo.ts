import type { Words } from '../../src/words/words.ts';

const OPEN = '⟦';
const CLOSE = '⟧';

/** Marks every string that a value or what its functions return holds. */
function marked<T>(value: T): T {
  if (typeof value === 'string') return `${OPEN}${value}${CLOSE}` as T;
  if (typeof value === 'function')
    return new Proxy(value, { apply: (target, self, args) => marked(Reflect.apply(target, self, args)) });
  if (value === null || typeof value !== 'object') return value;
  if (Array.isArray(value)) return value.map(marked) as T;
  return new Proxy(value, {
    get: (target, key) =>
      typeof key === 'string' ? marked(Reflect.get(target, key)) : Reflect.get(target, key),
  });
}

/** A language that marks all that it says, so that what is said without it stands out. */
export const pseudo = (words: Words): Words => marked(words);

/** A text without what a language said, nested parts included. */
export function unsaid(text: string): string {
  let depth = 0;
  let rest = '';
  for (const letter of text) {
    if (letter === OPEN) depth += 1;
    else if (letter === CLOSE) depth -= 1;
    else if (depth === 0) rest += letter;
  }
  return rest;
}
