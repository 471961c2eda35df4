/** A row of a compiled list as one line without its line end. */
export const joinCells = <C extends string>(
  columns: readonly C[],
  cells: Readonly<Record<C, string>>,
): string => columns.map(column => cells[column]).join('\t');

/** A line of a compiled list as a row. */
export function splitCells<C extends string>(
  columns: readonly C[],
  line: string,
): Readonly<Record<C, string>> {
  const cells = line.split('\t');
  const row = {} as Record<C, string>;
  for (let at = 0; at < columns.length; at++) row[columns[at]!] = cells[at] ?? '';
  return row;
}

/** All rows of a compiled list; its first line names the columns. */
export const readCells = <C extends string>(
  columns: readonly C[],
  bytes: Uint8Array,
): readonly Readonly<Record<C, string>>[] =>
  new TextDecoder()
    .decode(bytes)
    .split('\n')
    .slice(1)
    .filter(line => line !== '')
    .map(line => splitCells(columns, line));
