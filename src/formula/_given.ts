import type { GivenData } from '../record/given-data.ts';

/** Whether the record says anything of the hazards of a constituent. */
export const saysSomething = ({
  hazards,
  limits,
  ate,
  mFactors,
  peroxide,
  harmonised,
  unknown,
  additive,
  relevant,
}: GivenData): boolean =>
  hazards !== undefined ||
  limits !== undefined ||
  ate !== undefined ||
  mFactors !== undefined ||
  peroxide !== undefined ||
  harmonised !== undefined ||
  unknown.length > 0 ||
  !additive ||
  relevant;

/** Whether two lines say the same of one constituent; where it is from may differ. */
export const sameGiven = (a: GivenData, b: GivenData): boolean => a === b || canonical(a) === canonical(b);

function canonical({
  hazards,
  limits,
  ate,
  mFactors,
  peroxide,
  harmonised,
  unknown,
  additive,
  relevant,
}: GivenData): string {
  const sorted = (items: readonly unknown[] | undefined) => items?.map(item => text(item)).sort();
  return text({
    hazards: sorted(hazards),
    limits: sorted(limits),
    ate,
    mFactors,
    peroxide,
    harmonised,
    unknown: sorted(unknown),
    additive,
    relevant,
  });
}

function text(value: unknown): string {
  return JSON.stringify(value, (_key, inner: unknown) => {
    if (typeof inner !== 'object' || inner === null || Array.isArray(inner)) return inner;
    return Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)));
  });
}
