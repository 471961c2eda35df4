import type { Sought } from '../groups/members.ts';
import { readCells } from '../lists/cells.ts';
import { type Listed, type LookUp, searchIn } from '../lists/look-up.ts';
import { type CarcinogenCells, carcinogenColumns } from './columns.ts';

/** How the lists that 29 CFR 1910.1200 App. D names speak of a substance. */
export interface CarcinogenListing extends Listed {
  /** As the list names it; may be narrower than the substance. */
  readonly name: string;
  readonly iarc: { readonly group: string; readonly volume: string; readonly year: string } | null;
  readonly ntp: 'known' | 'reasonably anticipated' | null;
  /** Section of 29 CFR that regulates it as a carcinogen. */
  readonly osha: string | null;
  readonly notes: string | null;
}

const NTP = { K: 'known', R: 'reasonably anticipated' } as const;
const given = (cell: string): string | null => (cell === '' ? null : cell);

/** Opens carcinogen-lists.tsv; it is read when it is first asked. */
export function openCarcinogens(bytes: Uint8Array): (sought: Sought) => LookUp<CarcinogenListing> {
  let search: ((sought: Sought) => LookUp<CarcinogenListing>) | null = null;
  return sought => {
    search ??= searchIn('carcinogens', readCells(carcinogenColumns, bytes).map(readListing));
    return search(sought);
  };
}

/**
 * The listings of a constituent by OSHA, NTP and IARC, for 29 CFR 1910.1200 App. A, A.6.4.2: found by number, name and
 * group, with the condition each is limited to and those set aside.
 * @param groups ids of groups to which the record assigns the constituent beside those that number and name give.
 */
export const carcinogenListings = (
  search: (sought: Sought) => LookUp<CarcinogenListing>,
  name: string,
  cas: string | null,
  groups: readonly string[] = [],
): LookUp<CarcinogenListing> => search({ name, cas, groups });

function readListing(cells: CarcinogenCells): CarcinogenListing {
  const group = given(cells['iarc-group']);
  return {
    cas: given(cells.cas),
    name: cells.name,
    iarc: group === null ? null : { group, volume: cells['iarc-volume'], year: cells['iarc-year'] },
    ntp: NTP[cells.ntp as keyof typeof NTP] ?? null,
    osha: given(cells.osha),
    notes: given(cells.notes),
  };
}
