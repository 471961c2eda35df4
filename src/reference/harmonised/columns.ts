/** Columns of harmonised.tsv, in order. */
export const harmonisedColumns = [
  /** CAS number, or the index number where the entry has none. */
  'key',
  'index',
  'ec',
  'name',
  /** In the notation of Annex VI, ` | ` between hazards; so in all lists below. */
  'hazards',
  'limits',
  /** `oral 890 mg/kg`, with the form of the substance in brackets where one is named. */
  'ate',
  /** `acute 10`, `chronic 1`, or `single 10` where the entry does not say which class the factor is for. */
  'm-factors',
  /** EUH codes. */
  'supplemental',
  /** Limits of EUH codes. */
  'supplemental-limits',
  /** Notes of Annex VI 1.1.3. */
  'notes',
  /** Marks of Annex VI 1.2: the mark, a space, what it stands at. */
  'flags',
  /** CELEX number of the act that the row comes from. */
  'act',
  'applies-from',
] as const;

export type HarmonisedColumn = (typeof harmonisedColumns)[number];

export type HarmonisedCells = Readonly<Record<HarmonisedColumn, string>>;

/** Between the elements of a list in one cell. */
export const LIST_SEPARATOR = ' | ';

/** A row as one line without its line end. */
export const joinCells = (cells: HarmonisedCells): string =>
  harmonisedColumns.map(column => cells[column]).join('\t');

/** A line as a row. */
export function splitCells(line: string): HarmonisedCells {
  const cells = line.split('\t');
  return Object.fromEntries(
    harmonisedColumns.map((column, i) => [column, cells[i] ?? '']),
  ) as unknown as HarmonisedCells;
}
