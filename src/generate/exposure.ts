import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { carcinogenColumns, limitColumns } from '../reference/exposure/columns.ts';
import { joinCells } from '../reference/lists/cells.ts';
import { casNumbers, compiledTable } from './_compiled-table.ts';

type Row = Readonly<Record<string, string>>;

/** What each part of the notes of osha-pel.csv is about, by how it begins. */
const ABOUT = {
  'short-term': /^(?:STEL|excursion)/u,
  see: /^see /u,
  provenance: /^(?:CAS |no CAS|Z37|printed as)/u,
  notes: /^/u,
} as const;

const partsOf = ({ notes }: Row, about: keyof typeof ABOUT): string =>
  notes!
    .split('; ')
    .filter(part => Object.entries(ABOUT).find(([, begins]) => begins.test(part))?.[0] === about)
    .join('; ');

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
        'short-term': partsOf(row, 'short-term'),
        peak: row.peak!,
        skin: row.skin!,
        table: row.table!,
        see: partsOf(row, 'see'),
        notes: partsOf(row, 'notes'),
        provenance: partsOf(row, 'provenance'),
        basis: row.table!.startsWith('Z-') || standardsRead.includes(row.table!) ? 'text' : 'memory',
      }),
    ),
  );
  return compiledTable(limitColumns, lines);
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
  return compiledTable(carcinogenColumns, lines);
}

/** Writes exposure/osha-pel.tsv and exposure/carcinogen-lists.tsv from sources/, both in `data`. */
export function generateExposure(data: string): void {
  const read = (...name: string[]) => readFileSync(join(data, ...name), 'utf8');
  const source = JSON.parse(read('exposure', 'osha-pel.source.json')) as {
    standardsRead: { sections: readonly string[] };
  };
  writeFileSync(
    join(data, 'exposure', 'osha-pel.tsv'),
    compileLimits(read('sources', 'osha-pel.csv'), source.standardsRead.sections),
  );
  writeFileSync(
    join(data, 'exposure', 'carcinogen-lists.tsv'),
    compileCarcinogens(read('sources', 'carcinogen-lists.csv')),
  );
}
