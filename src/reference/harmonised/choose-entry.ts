import { milderThan } from '../../notation/severity.ts';
import type { CarcinogenListing } from '../exposure/carcinogen-listings.ts';
import type { LookUp } from '../lists/look-up.ts';
import type { HarmonisedEntry } from './entry.ts';
import { type SoughtEntry, suitability } from './entry-scopes.ts';

/** What decided among several entries. */
export type Decision = 'form-and-concentration' | 'severity' | 'record';

/** What the tables say of a substance in a mixture on a date. */
export interface FoundEntry {
  /** Null where none is in force on the date. */
  readonly entry: HarmonisedEntry | null;
  /** Entries of the same substance that were not taken. */
  readonly others: readonly HarmonisedEntry[];
  /** Null where there was nothing to decide. */
  readonly by: Decision | null;
  /** The row of the same substance that applies next, after the date. */
  readonly later: HarmonisedEntry | null;
  /** What the lists of carcinogens say, where the basis makes use of them. */
  readonly carcinogens?: LookUp<CarcinogenListing> | null;
}

/** Where there is one entry and no other, or none. */
export const only = (entry: HarmonisedEntry | null): FoundEntry => ({
  entry,
  others: [],
  by: null,
  later: null,
});

/**
 * Of several entries for one CAS number the one that suits form and concentration; of several that do, the most severe,
 * because which of them is meant is not known.
 */
export function chooseEntry(
  entries: readonly HarmonisedEntry[],
  sought: Pick<SoughtEntry, 'percent' | 'form'>,
): Pick<FoundEntry, 'entry' | 'others' | 'by'> {
  if (entries.length < 2) return { entry: entries[0] ?? null, others: [], by: null };
  const best = Math.max(...entries.map(entry => suitability(entry, sought)));
  const suited = entries.filter(entry => suitability(entry, sought) === best);
  const entry = suited.reduce((worst, next) => (isMoreSevere(next, worst) ? next : worst));
  return {
    entry,
    others: entries.filter(other => other !== entry),
    by: suited.length > 1 ? 'severity' : 'form-and-concentration',
  };
}

/** Whether one entry is more severe than another: by hazards, then by M-factors, then by specific limits. */
function isMoreSevere(one: HarmonisedEntry, other: HarmonisedEntry): boolean {
  const ahead =
    milderThan(other.hazards, one.hazards).length - milderThan(one.hazards, other.hazards).length ||
    largest(one) - largest(other) ||
    lowest(other) - lowest(one);
  return ahead > 0;
}

const largest = ({ mFactors }: HarmonisedEntry): number =>
  Math.max(mFactors.acute ?? 1, mFactors.chronic ?? 1);

const lowest = ({ limits }: HarmonisedEntry): number =>
  Math.min(101, ...limits.flatMap(({ low }) => (low ? [low.value] : [])));
