import type { Basis } from '../reference/thresholds.ts';
import { reasonsWanted } from './reasons.ts';

const withReasons = new WeakMap<Basis, Map<string, unknown>>();
const withoutReasons = new WeakMap<Basis, Map<string, unknown>>();

/** A value that depends on nothing but the basis and the key, made once: the outcome where no ingredient is concerned. */
export function constant<T>(basis: Basis, key: string, make: () => T): T {
  const made = reasonsWanted() ? withReasons : withoutReasons;
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
