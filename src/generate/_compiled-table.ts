/** The numbers of a cell; one empty number where it has none, so that the row is found by name and group. */
export function casNumbers(cell: string): string[] {
  const numbers = cell
    .split(';')
    .map(part => part.trim())
    .filter(part => part !== '');
  return numbers.length > 0 ? numbers : [''];
}

const casKey = (line: string): string => line.slice(0, line.indexOf('\t'));

/** The names of the columns, then the lines by CAS number; rows of one number keep the order of their source. */
export function compiledTable(columns: readonly string[], lines: readonly string[]): string {
  const sorted = lines
    .map((line, at) => ({ line, at, key: casKey(line) }))
    .sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : a.at - b.at));
  return `${[columns.join('\t'), ...sorted.map(({ line }) => line)].join('\n')}\n`;
}
