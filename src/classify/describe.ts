import type { Constituent } from '../formula/constituent.ts';
import type { Hazard } from '../notation/hazard.ts';
import { printHazard } from '../notation/print-hazard.ts';
import type { ClassifiedConstituent } from './classification.ts';
import type { Resolved } from './resolve.ts';

const printed = new WeakMap<readonly Hazard[], readonly string[]>();

// Entries are read once and shared, so their hazards are printed once.
function printAll(hazards: readonly Hazard[]): readonly string[] {
  const known = printed.get(hazards);
  if (known) return known;
  const made = hazards.map(printHazard);
  printed.set(hazards, made);
  return made;
}

/** A constituent as it was classified. */
export const describeConstituent = (
  { name, cas, low, high, water }: Constituent,
  { data }: Resolved,
): ClassifiedConstituent => ({
  name,
  cas,
  percent: high.value,
  ...(low.value === high.value ? {} : { percentRange: [low.value, high.value] as const }),
  hazards: printAll(data.hazards),
  source: data.source,
  unknown: [...data.unknown],
  water,
});
