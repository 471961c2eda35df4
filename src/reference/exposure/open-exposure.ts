import type { Sought } from '../groups/members.ts';
import { readCells } from '../lists/cells.ts';
import { type Listed, type LookUp, searchIn } from '../lists/look-up.ts';
import { type CarcinogenListing, openCarcinogens } from './carcinogen-listings.ts';
import { type LimitCells, limitColumns } from './columns.ts';

/** One line of the OSHA tables for a substance; figures as printed, null where the table has none. */
export interface ExposureLimit extends Listed {
  /** As the table prints it, with the fraction or form that the limit is for. */
  readonly name: string;
  /** 8-hour time-weighted average. */
  readonly twa: { readonly ppm: string | null; readonly milligramsPerCubicMetre: string | null };
  /** A value that no part of the working day may exceed (29 CFR 1910.1000(a)(1)). */
  readonly ceiling: string | null;
  /** Short-term or excursion limit of a standard of its own, as `STEL 5 ppm over 15 min`. */
  readonly shortTerm: string | null;
  readonly peak: string | null;
  /** The table marks absorption through the skin. */
  readonly skin: boolean;
  /** `Z-1`, `Z-2`, `Z-3` or the section of a substance-specific standard, as `1910.1048`. */
  readonly table: string;
  /** Where the entry sends its reader, as `see 1910.1028`. */
  readonly see: string | null;
  readonly notes: string | null;
  /** Whether the row was compared with the text of the regulation. */
  readonly compared: boolean;
}

/** Workplace limits and carcinogen lists, searched by CAS number, name and group. */
export interface ExposureTable {
  /** Limits of a constituent in the order of the tables. */
  limits(sought: Sought): LookUp<ExposureLimit>;
  carcinogens(sought: Sought): LookUp<CarcinogenListing>;
}

const given = (cell: string): string | null => (cell === '' ? null : cell);

/** Opens the compiled tables; each is read when it is first asked. */
export function openExposure(limits: Uint8Array, carcinogens: Uint8Array): ExposureTable {
  let search: ((sought: Sought) => LookUp<ExposureLimit>) | null = null;
  return {
    limits: sought => {
      search ??= searchIn('osha-pel', readCells(limitColumns, limits).map(readLimit));
      return search(sought);
    },
    carcinogens: openCarcinogens(carcinogens),
  };
}

const readLimit = (cells: LimitCells): ExposureLimit => ({
  cas: given(cells.cas),
  name: cells.name,
  twa: { ppm: given(cells['twa-ppm']), milligramsPerCubicMetre: given(cells['twa-mg-m3']) },
  ceiling: given(cells.ceiling),
  shortTerm: given(cells['short-term']),
  peak: given(cells.peak),
  skin: cells.skin !== '',
  table: cells.table,
  see: given(cells.see),
  notes: given(cells.notes),
  compared: cells.basis === 'text',
});
