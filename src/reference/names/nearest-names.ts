import { distance } from 'fastest-levenshtein';
import { nameKey } from '../lists/names.ts';
import type { NamedSubstance, SubstanceNames } from './substance-names.ts';

const MOST = 3;

/** Beyond a sixth of its letters a name is another name, not a slip (common practice, no source). */
const tolerated = (key: string): number => Math.floor(key.length / 6);

/** Substances whose name differs from what was written by a few letters, the nearest first. */
export function nearestNames({ keys }: SubstanceNames, name: string): readonly NamedSubstance[] {
  const key = nameKey(name);
  const most = tolerated(key);
  if (most === 0) return [];
  const near: { readonly steps: number; readonly found: readonly NamedSubstance[] }[] = [];
  for (const [known, found] of keys) {
    if (Math.abs(known.length - key.length) > most) continue;
    // A number in a name is a place in the molecule, never a slip.
    if (digits(known) !== digits(key)) continue;
    const steps = distance(known, key);
    if (steps <= most) near.push({ steps, found });
  }
  const sorted = near.sort((a, b) => a.steps - b.steps).flatMap(({ found }) => found);
  return [...new Map(sorted.map(each => [each.cas, each])).values()].slice(0, MOST);
}

const digits = (key: string): string => key.replace(/\D/gu, '');
