import type { Basis } from '../reference/thresholds.ts';

const made = new WeakMap<Basis, Map<string, unknown>>();

/** A value that depends on nothing but the basis and the key, made once: the outcome where no ingredient is concerned. */
export function constant<T>(basis: Basis, key: string, make: () => T): T {
  let values = made.get(basis);
  if (!values) {
    values = new Map();
    made.set(basis, values);
  }
  const known = values.get(key) as T | undefined;
  if (known !== undefined) return known;
  const value = make();
  values.set(key, value);
  return value;
}
