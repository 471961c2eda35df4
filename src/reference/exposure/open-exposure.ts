import { carcinogenColumns, limitColumns, splitCells } from './columns.ts';

/** One line of the OSHA tables for a substance; figures as printed, null where the table has none. */
export interface ExposureLimit {
  /** As the table prints it, with the fraction or form that the limit is for. */
  readonly name: string;
  /** 8-hour time-weighted average. */
  readonly twa: { readonly ppm: string | null; readonly milligramsPerCubicMetre: string | null };
  readonly ceiling: string | null;
  readonly peak: string | null;
  /** The table marks absorption through the skin. */
  readonly skin: boolean;
  /** `Z-1`, `Z-2`, `Z-3` or the section of a substance-specific standard, as `1910.1048`. */
  readonly table: string;
  readonly notes: string | null;
  /** Whether the row was compared with the text of the regulation. */
  readonly compared: boolean;
}

/** How the lists that 29 CFR 1910.1200 App. D names speak of a substance. */
export interface CarcinogenListing {
  /** As the list names it; may be narrower than the substance. */
  readonly name: string;
  readonly iarc: { readonly group: string; readonly volume: string; readonly year: string } | null;
  readonly ntp: 'known' | 'reasonably anticipated' | null;
  /** Section of 29 CFR that regulates it as a carcinogen. */
  readonly osha: string | null;
  readonly notes: string | null;
}

/** Workplace limits and carcinogen lists by CAS number. */
export interface ExposureTable {
  /** Limits of a substance in the order of the file; empty where the tables name none. */
  limits(cas: string): readonly ExposureLimit[];
  carcinogens(cas: string): readonly CarcinogenListing[];
}

const LINE_END = 0x0a;

/** Opens the compiled tables; only the lines that hold what is asked for are read. */
export function openExposure(limits: Uint8Array, carcinogens: Uint8Array): ExposureTable {
  const [first, second] = [limits, carcinogens].map(file =>
    Buffer.from(file.buffer, file.byteOffset, file.byteLength),
  ) as [Buffer, Buffer];
  return {
    limits: cas => linesOf(first, cas).map(readLimit),
    carcinogens: cas => linesOf(second, cas).map(readListing),
  };
}

/** The lines that begin with a CAS number. */
function linesOf(bytes: Buffer, cas: string): readonly string[] {
  const needle = `\n${cas}\t`;
  const lines: string[] = [];
  for (let at = bytes.indexOf(needle); at >= 0; at = bytes.indexOf(needle, at + 1)) {
    const end = bytes.indexOf(LINE_END, at + 1);
    lines.push(bytes.toString('utf8', at + 1, end < 0 ? bytes.length : end));
  }
  return lines;
}

const given = (cell: string): string | null => (cell === '' ? null : cell);

function readLimit(line: string): ExposureLimit {
  const cells = splitCells(limitColumns, line);
  return {
    name: cells.name,
    twa: { ppm: given(cells['twa-ppm']), milligramsPerCubicMetre: given(cells['twa-mg-m3']) },
    ceiling: given(cells.ceiling),
    peak: given(cells.peak),
    skin: cells.skin !== '',
    table: cells.table,
    notes: given(cells.notes),
    compared: cells.basis === 'text',
  };
}

const NTP = { K: 'known', R: 'reasonably anticipated' } as const;

function readListing(line: string): CarcinogenListing {
  const cells = splitCells(carcinogenColumns, line);
  const group = given(cells['iarc-group']);
  return {
    name: cells.name,
    iarc: group === null ? null : { group, volume: cells['iarc-volume'], year: cells['iarc-year'] },
    ntp: NTP[cells.ntp as keyof typeof NTP] ?? null,
    osha: given(cells.osha),
    notes: given(cells.notes),
  };
}
