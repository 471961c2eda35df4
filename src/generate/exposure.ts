import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { carcinogenColumns, joinCells, limitColumns } from '../reference/exposure/columns.ts';

type Row = Readonly<Record<string, string>>;

/** Text of osha-pel.tsv: the names of the columns, then a line for each CAS number of each row. */
export function compileLimits(csv: string, standardsRead: readonly string[]): string {
  const rows = parse(csv, { columns: true }) as Row[];
  const lines = rows.flatMap(row =>
    casNumbers(row.cas_no!).map(cas =>
      joinCells(limitColumns, {
        cas,
        name: row.name!,
        'twa-ppm': row.twa_ppm!,
        'twa-mg-m3': row.twa_mg_m3!,
        ceiling: row.ceiling!,
        peak: row.peak!,
        skin: row.skin!,
        table: row.table!,
        notes: row.notes!,
        basis: row.table!.startsWith('Z-') || standardsRead.includes(row.table!) ? 'text' : 'memory',
      }),
    ),
  );
  return table(limitColumns, lines);
}

/** Text of carcinogen-lists.tsv, of the same form. */
export function compileCarcinogens(csv: string): string {
  const rows = parse(csv, { columns: true }) as Row[];
  const lines = rows.flatMap(row =>
    casNumbers(row.cas_no!).map(cas =>
      joinCells(carcinogenColumns, {
        cas,
        name: row.name!,
        'iarc-group': row.iarc_group!,
        'iarc-volume': row.iarc_volume!,
        'iarc-year': row.iarc_evaluation_year!,
        ntp: row.ntp_roc15!,
        osha: row.osha_standard!,
        notes: row.notes!,
      }),
    ),
  );
  return table(carcinogenColumns, lines);
}

/** Rows without a CAS number are kept out: nothing could find them. */
const casNumbers = (cell: string): string[] =>
  cell
    .split(';')
    .map(part => part.trim())
    .filter(part => part !== '');

const casKey = (line: string): string => line.slice(0, line.indexOf('\t'));

/** Sorted by CAS number; rows of one number keep the order of their source. */
function table(columns: readonly string[], lines: readonly string[]): string {
  const sorted = lines
    .map((line, at) => ({ line, at, key: casKey(line) }))
    .sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : a.at - b.at));
  return `${[columns.join('\t'), ...sorted.map(({ line }) => line)].join('\n')}\n`;
}

/**
 * Writes osha-pel.tsv and carcinogen-lists.tsv.
 * @param hazardData the folder hazard-data
 */
export function generateExposure(hazardData: string): void {
  const [sources, folder] = [join(hazardData, 'sources', 'exposure'), join(hazardData, 'exposure')];
  const read = (name: string) => readFileSync(join(sources, name), 'utf8');
  const source = JSON.parse(readFileSync(join(folder, 'osha-pel.source.json'), 'utf8')) as {
    standardsRead: { sections: readonly string[] };
  };
  writeFileSync(
    join(folder, 'osha-pel.tsv'),
    compileLimits(read('osha-pel.csv'), source.standardsRead.sections),
  );
  writeFileSync(join(folder, 'carcinogen-lists.tsv'), compileCarcinogens(read('carcinogen-lists.csv')));
}
