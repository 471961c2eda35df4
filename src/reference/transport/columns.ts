/** Columns of hazardous-materials-table.tsv, in order: those of 49 CFR 172.101 and what its names say of concentration. */
export const tableColumns = [
  'symbol',
  /** Name and description with the words in italics. */
  'description',
  'class',
  'id',
  'packing-group',
  /** Labels: primary and subsidiary hazards. */
  'labels',
  'special-provisions',
  /** 8A, 8B, 8C: sections of part 173. */
  'exceptions',
  'non-bulk',
  'bulk',
  'passenger-limit',
  'cargo-limit',
  'stowage',
  'stowage-other',
  /** Proper shipping names, the words in Roman type. */
  'names',
  /** Range of percent that the description states: `> 10 < 50`; empty where it states none. */
  'range',
] as const;

export type TableColumn = (typeof tableColumns)[number];
export type TableCells = Readonly<Record<TableColumn, string>>;
