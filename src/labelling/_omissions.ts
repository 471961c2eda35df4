import type { Omission } from './label-elements.ts';

/** Each omission once, in the order in which they arose. */
export function distinct(omissions: readonly Omission[]): Omission[] {
  const seen = new Map(
    omissions.map(each => [`${each.what}\n${JSON.stringify(each.why)}\n${each.cite}`, each]),
  );
  return [...seen.values()];
}
