import { type TableCells, tableColumns } from './columns.ts';
import { readRange } from './percent-range.ts';
import type { PackingGroup, TableEntry } from './table-entry.ts';

/** The Hazardous Materials Table with its look-ups. */
export interface HazardousMaterialsTable {
  readonly entries: readonly TableEntry[];
  /** Entries of an identification number in the order of the table. */
  byId(id: string): readonly TableEntry[];
  /** Entries with that proper shipping name, letters of either case. */
  byName(name: string): readonly TableEntry[];
}

const list = (cell: string): string[] =>
  cell
    .split(',')
    .map(part => part.trim())
    .filter(part => part !== '');

/** Reads a line of hazardous-materials-table.tsv into its cells. */
export function readCells(line: string): TableCells {
  const cells = line.split('\t');
  return Object.fromEntries(tableColumns.map((column, at) => [column, cells[at] ?? ''])) as TableCells;
}

/** Two rows print a point for a comma: `8.6.1`, `6.1. 4.1`. */
const labelsOf = (cell: string): string[] =>
  list(cell.replace(/\. /, ', ').replace(/^(\d)\.(\d\.\d)$/, '$1, $2'));

function entryOf(cells: TableCells): TableEntry {
  const hazardClass = cells.class;
  return {
    symbols: cells.symbol.split(' ').filter(symbol => symbol !== ''),
    description: cells.description,
    names: shippingNames(cells.names),
    hazardClass,
    id: cells.id,
    packingGroup: cells['packing-group'] === '' ? null : (cells['packing-group'] as PackingGroup),
    subsidiary: labelsOf(cells.labels).filter(label => label !== hazardClass && label !== 'None'),
    labelled: cells.labels !== 'None',
    specialProvisions: list(cells['special-provisions']),
    exceptions: list(cells.exceptions).filter(section => section !== 'None'),
    aircraft: { passenger: cells['passenger-limit'], cargo: cells['cargo-limit'] },
    vessel: { stowage: cells.stowage, other: cells['stowage-other'] },
    bulkSections: list(cells.bulk).filter(section => section !== 'None'),
    range: readRange(cells.range),
  };
}

/** `Ethanol or Ethyl alcohol` is two names (172.101(c)(2)); a trailing comma of the table is no part of one. */
const shippingNames = (cell: string): string[] =>
  cell.split(/,? or (?=[A-Z])/).map(name => name.trim().replace(/[,;]$/, ''));

/** Opens hazardous-materials-table.tsv. */
export function openHazardousMaterialsTable(bytes: Buffer): HazardousMaterialsTable {
  const lines = bytes.toString('utf8').trimEnd().split('\n').slice(1);
  const rows = lines.map((line, at) => ({ at, cells: line.split('\t') }));
  const made: TableEntry[] = [];
  // A run asks for few of the three thousand entries: each is read when it is first asked for.
  const entriesOf = (found: readonly { readonly at: number }[] = []): readonly TableEntry[] =>
    found.map(({ at }) => {
      made[at] ??= entryOf(readCells(lines[at]!));
      return made[at];
    });
  const [idColumn, nameColumn] = [tableColumns.indexOf('id'), tableColumns.indexOf('names')];
  const ids = group(rows, ({ cells }) => [cells[idColumn] ?? '']);
  let names: ReadonlyMap<string, readonly { readonly at: number }[]> | null = null;
  return {
    get entries() {
      return entriesOf(rows);
    },
    byId: id => entriesOf(ids.get(id)),
    byName: name => {
      names ??= group(rows, ({ cells }) => shippingNames(cells[nameColumn] ?? '').map(key));
      return entriesOf(names.get(key(name)));
    },
  };
}

/** A name without case, end point and doubled spaces (172.101(c)(1)). */
const key = (name: string): string => name.toLowerCase().replace(/\s+/g, ' ').replace(/\.$/, '');

function group<T>(values: readonly T[], keys: (value: T) => readonly string[]): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const value of values)
    for (const name of keys(value)) {
      const found = groups.get(name);
      if (found) found.push(value);
      else groups.set(name, [value]);
    }
  return groups;
}
