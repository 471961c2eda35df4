/** Columns of osha-pel.tsv, in order. */
export const limitColumns = [
  /** Empty where the table prints none. */
  'cas',
  /** As the table prints it, with the fraction or form that the limit is for. */
  'name',
  /** 8-hour time-weighted average in ppm. */
  'twa-ppm',
  /** 8-hour time-weighted average in mg/m3; a formula for silica dusts. */
  'twa-mg-m3',
  'ceiling',
  /** Short-term or excursion limit of a standard, as `STEL 5 ppm over 15 min`. */
  'short-term',
  'peak',
  /** `X` where the table marks absorption through the skin. */
  'skin',
  /** `Z-1`, `Z-2`, `Z-3` or the section of a substance-specific standard. */
  'table',
  /** Where the entry sends its reader, as `see 1910.1028`. */
  'see',
  'notes',
  /** Remarks on the row, not on the limit: how its CAS number was assigned, the standard it was taken from. */
  'provenance',
  /** `text` where the row was compared with the regulation, `memory` where it was not. */
  'basis',
] as const;

/** Columns of carcinogen-lists.tsv, in order. */
export const carcinogenColumns = [
  /** Empty where no list gives one. */
  'cas',
  /** As the list names it; may be narrower than the substance. */
  'name',
  'iarc-group',
  'iarc-volume',
  'iarc-year',
  /** `K` known, `R` reasonably anticipated. */
  'ntp',
  /** Section of 29 CFR. */
  'osha',
  'notes',
] as const;

export type LimitCells = Readonly<Record<(typeof limitColumns)[number], string>>;
export type CarcinogenCells = Readonly<Record<(typeof carcinogenColumns)[number], string>>;
