import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { joinCells } from '../reference/lists/cells.ts';
import { cerclaColumns, prop65Columns, toxicChemicalColumns } from '../reference/regulatory/columns.ts';
import { casNumbers, compiledTable } from './_compiled-table.ts';

type Row = Readonly<Record<string, string>>;

const rowsOf = (csv: string): readonly Row[] => parse(csv, { columns: true }) as Row[];

/** Programmes that the notes and the basis of epa-lists.csv speak of, each part after its name and a colon. */
const PROGRAMME = /(?:^|; )(?=(?:302|313|CERCLA|112\(r\)): )/u;

/** What the notes of a row say of one programme. */
const notesOf = ({ notes }: Row, programme: string): string =>
  notes!
    .split(PROGRAMME)
    .filter(part => part.startsWith(`${programme}: `))
    .map(part => part.slice(programme.length + 2))
    .join('; ');

const basisOf = ({ basis }: Row, programme: string): string =>
  basis!
    .split(' ')
    .find(part => part.startsWith(`${programme}:`))
    ?.at(-1) ?? '';

/** Text of cercla.tsv: the rows of epa-lists.csv with a reportable quantity. */
export function compileCercla(csv: string): string {
  const lines = rowsOf(csv)
    .filter(row => row.cercla_rq_lb !== '')
    .map(row =>
      joinCells(cerclaColumns, {
        cas: row.cas_no!,
        name: row.name!,
        'rq-lb': row.cercla_rq_lb!,
        notes: notesOf(row, 'CERCLA'),
        basis: basisOf(row, 'CERCLA') === 'R' ? 'text' : 'memory',
      }),
    );
  return compiledTable(cerclaColumns, lines);
}

const SPECIAL = 'chemical of special concern (40 CFR 372.28)';
const BASES: Readonly<Record<string, string>> = { R: 'text', P: 'programme', K: 'memory' };

/**
 * Text of epcra-313.tsv: the rows of epa-lists.csv that 40 CFR 372.65 lists.
 * @param read CAS numbers and codes of categories that the source does not have from the text and that were read in it since.
 */
export function compileToxicChemicals(csv: string, read: readonly string[]): string {
  const lines = rowsOf(csv)
    .filter(row => row.epcra_313 === 'Y')
    .map(row => {
      const notes = notesOf(row, '313');
      const category = /^category (N\d+)/u.exec(notes)?.[1] ?? '';
      return joinCells(toxicChemicalColumns, {
        cas: row.cas_no!,
        name: row.name!,
        category,
        'special-concern': notes.includes(SPECIAL) ? 'x' : '',
        notes: notes
          .split('; ')
          .filter(part => part !== SPECIAL && !/^category(?: N\d+)?$/u.test(part))
          .join('; '),
        basis: read.includes(row.cas_no || category) ? 'text' : BASES[basisOf(row, '313')]!,
      });
    });
  return compiledTable(toxicChemicalColumns, lines);
}

/** Text of prop65.tsv: every row of prop65.csv. */
export function compileProp65(csv: string): string {
  const lines = rowsOf(csv).flatMap(row =>
    casNumbers(row.cas_no!).map(cas =>
      joinCells(prop65Columns, {
        cas,
        name: row.name!,
        toxicity: row.toxicity_type!,
        mechanism: row.listing_mechanism!,
        'listed-on': row.date_listed!,
        'level-ug-per-day': row.nsrl_or_madl_ug_per_day!,
        notes: row.notes!,
      }),
    ),
  );
  return compiledTable(prop65Columns, lines);
}

/** Writes the tables of regulatory/ from sources/, both in `data`. Lists known from memory alone are not compiled. */
export function generateRegulatory(data: string): void {
  const read = (...name: string[]) => readFileSync(join(data, ...name), 'utf8');
  const write = (name: string, text: string) => writeFileSync(join(data, 'regulatory', name), text);
  const epa = read('sources', 'epa-lists.csv');
  const source = JSON.parse(read('regulatory', 'epcra-313.source.json')) as {
    readSince: { cas: readonly string[]; categories: readonly string[] };
  };
  write('cercla.tsv', compileCercla(epa));
  write(
    'epcra-313.tsv',
    compileToxicChemicals(epa, [...source.readSince.cas, ...source.readSince.categories]),
  );
  write('prop65.tsv', compileProp65(read('sources', 'prop65.csv')));
}
