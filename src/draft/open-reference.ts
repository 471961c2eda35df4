import type { HarmonisedLookup } from '../classify/resolve.ts';
import { readPackageFile } from '../environment/package-files.ts';
import { type BasisId, loadBasis } from '../reference/basis.ts';
import type { CarcinogenListing } from '../reference/exposure/carcinogen-listings.ts';
import { type ExposureTable, openExposure } from '../reference/exposure/open-exposure.ts';
import type { SoughtEntry } from '../reference/harmonised/entry-scopes.ts';
import { type HarmonisedTable, openHarmonised } from '../reference/harmonised/open-harmonised.ts';
import { type LabelData, loadLabelData } from '../reference/label-data/load-label-data.ts';
import type { LookUp } from '../reference/lists/look-up.ts';
import { openRegulatory, type RegulatoryTable } from '../reference/regulatory/open-regulatory.ts';
import type { Basis } from '../reference/thresholds.ts';
import { type Outcome, succeed } from '../report/diagnostic.ts';

/** What classification and labelling look up on one date: figures, harmonised entries, statements. */
export interface Reference {
  readonly basis: Basis;
  readonly lookup: HarmonisedLookup;
  readonly labelData: LabelData;
}

let table: HarmonisedTable | null = null;

/** The harmonised table of the package, read once. */
export function harmonisedTable(): HarmonisedTable {
  table ??= openHarmonised(readPackageFile('hazard-data', 'substances', 'harmonised.tsv'));
  return table;
}

/**
 * Opens the reference data of a basis for a date (YYYY-MM-DD).
 * @returns an error where no text held of the basis is in force on that date.
 */
export async function openReference(id: BasisId, asOf: string): Promise<Outcome<Reference>> {
  const [basis, labelData] = await Promise.all([loadBasis(id, asOf), loadLabelData(id)]);
  if (!basis.ok) return basis;
  const listed = basis.value.carcinogenLists !== null;
  return succeed({
    basis: basis.value,
    labelData,
    lookup: sought => {
      const { entry, others, by, later } = harmonisedTable().find(sought, asOf);
      return { entry, others, by, later, carcinogens: listed ? carcinogensOf(sought) : null };
    },
  });
}

let exposure: ExposureTable | null = null;

/** Workplace limits and carcinogen lists of the package, read once. */
export function exposureTable(): ExposureTable {
  exposure ??= openExposure(
    readPackageFile('hazard-data', 'exposure', 'osha-pel.tsv'),
    readPackageFile('hazard-data', 'exposure', 'carcinogen-lists.tsv'),
  );
  return exposure;
}

let regulatory: RegulatoryTable | null = null;

/** The lists of section 15 of the package, read once. */
export function regulatoryTable(): RegulatoryTable {
  regulatory ??= openRegulatory(
    readPackageFile('hazard-data', 'regulatory', 'cercla.tsv'),
    readPackageFile('hazard-data', 'regulatory', 'epcra-313.tsv'),
    readPackageFile('hazard-data', 'regulatory', 'prop65.tsv'),
  );
  return regulatory;
}

/** By name, then by number, then by form: a key of all three would have to be made for each question. */
const searched = new Map<string, Map<string | null, Map<string, LookUp<CarcinogenListing>>>>();

/** Listings of a substance; each is searched once, because a table of what follows from a percent asks many times. */
function carcinogensOf({ name, cas, form }: SoughtEntry): LookUp<CarcinogenListing> {
  let found = searched.get(name)?.get(cas)?.get(form);
  if (!found) {
    found = exposureTable().carcinogens({ name, cas, form });
    const byCas = searched.get(name) ?? new Map<string | null, Map<string, LookUp<CarcinogenListing>>>();
    const byForm = byCas.get(cas) ?? new Map<string, LookUp<CarcinogenListing>>();
    if (searched.size < 10_000) searched.set(name, byCas.set(cas, byForm.set(form, found)));
  }
  return found;
}
