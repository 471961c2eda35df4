import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { type TableCells, tableColumns } from '../reference/transport/columns.ts';
import { printRange, speaksOfPercent, statedRange } from '../reference/transport/percent-range.ts';

type Row = Readonly<Record<string, string>>;

/** Columns of the source, beside those of the compiled table. */
export const sourceColumns: Readonly<Record<Exclude<keyof TableCells, 'range'>, string>> = {
  symbol: 'symbol',
  description: 'proper_shipping_name',
  class: 'class',
  id: 'id_number',
  'packing-group': 'packing_group',
  labels: 'labels',
  'special-provisions': 'special_provisions',
  exceptions: 'exceptions_8a',
  'non-bulk': 'non_bulk_8b',
  bulk: 'bulk_8c',
  'passenger-limit': 'passenger_limit_9a',
  'cargo-limit': 'cargo_limit_9b',
  stowage: 'vessel_stowage_10a',
  'stowage-other': 'vessel_stowage_other_10b',
  names: 'name_roman_text',
};

/** Text of hazardous-materials-table.tsv, and the rows that name percentages no range was read from. */
export function compileHazardousMaterials(csv: string): { readonly table: string; readonly unread: unknown } {
  const rows = parse(csv, { columns: true }) as Row[];
  const unread: unknown[] = [];
  const lines = rows.map((row, at) => {
    const description = row.proper_shipping_name!;
    const range = statedRange(description);
    if (!range && speaksOfPercent(description))
      unread.push({ row: at + 2, id: row.id_number, packingGroup: row.packing_group, description });
    return tableColumns
      .map(column => (column === 'range' ? printRange(range) : row[sourceColumns[column]]!))
      .join('\t');
  });
  return { table: `${[tableColumns.join('\t'), ...lines].join('\n')}\n`, unread };
}

/** Writes the compiled table into hazard-data/us-dot. */
export function generateHazardousMaterials(hazardData: string): void {
  const csv = readFileSync(join(hazardData, 'sources', 'dot-172-101.csv'), 'utf8');
  const { table, unread } = compileHazardousMaterials(csv);
  const folder = join(hazardData, 'us-dot');
  writeFileSync(join(folder, 'hazardous-materials-table.tsv'), table);
  writeFileSync(
    join(folder, 'ranges-not-read.json'),
    `${JSON.stringify({ source: 'hazard-data/sources/dot-172-101.csv', checkedOn: '2026-11-26', about: 'Rows whose description names a percentage, where no single range was read from it. They are in the table, without a range.', rows: unread }, null, 1)}\n`,
  );
}
