/** A row of annex-vi.csv by its column names. */
export type AnnexViRow = Readonly<
  Record<
    | 'index_no'
    | 'name'
    | 'ec_no'
    | 'cas_no'
    | 'hazard_classes'
    | 'h_codes'
    | 'suppl_codes'
    | 'limits_m_ate'
    | 'notes'
    | 'celex'
    | 'applies_from',
    string
  >
>;

/** Something in a row that could not be read. */
export interface Unparsed {
  readonly index: string;
  readonly column: string;
  readonly text: string;
  readonly message: string;
}

/** The parts of a list cell. */
export const parts = (cell: string, separator: string): string[] =>
  cell === ''
    ? []
    : cell
        .split(separator)
        .map(part => part.trim())
        .filter(part => part !== '');
