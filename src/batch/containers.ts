import { Exact } from '../quantity/exact.ts';
import { inUnit } from '../quantity/measure.ts';
import { findUnit } from '../quantity/units.ts';
import data from './containers.json' with { type: 'json' };

/** A container that a shop measures in. */
export type ContainerName = keyof typeof data.containers;

/** An amount in containers: whole ones, and US gallons over them. */
export interface InContainers {
  readonly container: ContainerName;
  /** With fractions: 2.4. */
  readonly count: number;
  readonly full: number;
  readonly restGallons: number;
}

const gallon = findUnit('volume', 'gal')!.factor;

/** Millilitres of a container. */
export const containerMillilitres = (name: ContainerName): Exact =>
  Exact.fraction(gallon.mul(data.containers[name].gallons));

/** The container that a word means: `drums`, `Pail`; null where it means none. */
export function findContainer(word: string): ContainerName | null {
  const wanted = word.trim().toLowerCase();
  const names = Object.keys(data.containers) as ContainerName[];
  return names.find(name => data.containers[name].also.includes(wanted)) ?? null;
}

/** A volume in drums, in pails where it is less than a share of a drum, or in neither. */
export function inContainers(millilitres: Exact): InContainers | null {
  const gallons = inUnit(millilitres, 'volume', 'gal');
  for (const container of ['drum', 'pail'] as const) {
    const size = data.containers[container].gallons;
    const count = gallons.exact.div(size);
    if (count.lt(data.measured[container].from)) continue;
    const full = count.floor();
    return {
      container,
      count: count.valueOf(),
      full: full.valueOf(),
      restGallons: count.sub(full).mul(size).valueOf(),
    };
  }
  return null;
}
