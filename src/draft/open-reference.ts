import type { HarmonisedLookup } from '../classify/resolve.ts';
import { type BasisId, loadBasis } from '../reference/basis.ts';
import { type HarmonisedTable, openHarmonised } from '../reference/harmonised/open-harmonised.ts';
import { readPackageFile } from '../reference/package-files.ts';
import type { Basis } from '../reference/thresholds.ts';
import { type Outcome, succeed } from '../report/diagnostic.ts';

/** What classification looks up: the figures of a basis and the harmonised entries, on one date. */
export interface Reference {
  readonly basis: Basis;
  readonly lookup: HarmonisedLookup;
}

let table: HarmonisedTable | null = null;

/** The harmonised table of the package, read once. */
export function harmonisedTable(): HarmonisedTable {
  table ??= openHarmonised(readPackageFile('hazard-data', 'substances', 'harmonised.tsv'));
  return table;
}

/**
 * Opens the reference data of a basis for a date (YYYY-MM-DD).
 * @returns an error where no text of the basis was in force on that date.
 */
export async function openReference(id: BasisId, asOf: string): Promise<Outcome<Reference>> {
  const basis = await loadBasis(id, asOf);
  if (!basis.ok) return basis;
  return succeed({ basis: basis.value, lookup: (cas, percent) => harmonisedTable().byCas(cas, asOf, percent) });
}
