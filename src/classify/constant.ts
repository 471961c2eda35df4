import type { PhysicalForm } from '../record/product-record.ts';
import type { Basis } from '../reference/thresholds.ts';

/** A key for each physical form, made once. */
export const keysByForm = (name: string): Readonly<Record<PhysicalForm, string>> => ({
  liquid: `${name}, liquid`,
  solid: `${name}, solid`,
  gas: `${name}, gas`,
  aerosol: `${name}, aerosol`,
});

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
