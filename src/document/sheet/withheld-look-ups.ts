import type { CarcinogenListing } from '../../reference/exposure/carcinogen-listings.ts';
import type { ExposureLimit } from '../../reference/exposure/open-exposure.ts';
import type { Found, Listed, LookUp } from '../../reference/lists/look-up.ts';

const masked = <R extends Listed>(
  { list, found, sought }: LookUp<R>,
  name: string,
  row: (row: R) => R,
): LookUp<R> => ({
  list,
  found: found.map((each): Found<R> => ({ ...each, row: row(each.row), group: null, membership: 'member' })),
  setAside: [],
  sought: { ...sought, cas: null, name, groups: [] },
});

/** Limits of an ingredient whose identity is withheld: figures without the name, number or group of the entry. */
export const maskedLimits = (lookUp: LookUp<ExposureLimit>, name: string): LookUp<ExposureLimit> =>
  masked(lookUp, name, row => ({ ...row, cas: null, name, see: null, notes: null }));

/** Listings of an ingredient whose identity is withheld: by whom it is listed, not as what or where. */
export const maskedListings = (lookUp: LookUp<CarcinogenListing>, name: string): LookUp<CarcinogenListing> =>
  masked(lookUp, name, row => ({
    ...row,
    cas: null,
    name,
    notes: null,
    iarc: row.iarc && { ...row.iarc, volume: '', year: '' },
    osha: row.osha && '',
  }));
