import { parse } from 'csv-parse/sync';
import { understandHazard } from '../notation/understand-hazard.ts';

/** What a column of a table holds. */
export type TableColumn = 'name' | 'cas' | 'percent' | 'amount' | 'unit' | 'hazards' | 'density';

/** A formula read from a table, with everything of the table that is not in it. */
export interface TableFormula {
  /** Row of the header, counted from 1. */
  readonly headerRow: number;
  /** Heading of each column that was understood. */
  readonly columns: Readonly<Partial<Record<TableColumn, string>>>;
  /** Headings of columns that were not. */
  readonly ignored: readonly string[];
  readonly lines: readonly TableLine[];
  /** Rows that hold no line, with the reason. */
  readonly left: readonly {
    readonly row: number;
    readonly text: string;
    readonly reason: 'before-header' | 'total' | 'no-name';
  }[];
  /** Numbers were written with a decimal comma. */
  readonly decimalComma: boolean;
  /** Rows whose CAS number the supplier keeps back, with what stands in its place. */
  readonly withheld: readonly { readonly row: number; readonly name: string; readonly text: string }[];
}

/** A line for a formula, its values as written. */
export interface TableLine {
  readonly row: number;
  readonly name: string;
  readonly cas?: string;
  readonly percent?: string;
  readonly amount?: string;
  readonly density?: string;
  readonly hazards?: readonly string[];
}

const headings: readonly (readonly [TableColumn, RegExp])[] = [
  ['cas', /\bcas\b|\bcasrn\b|registry/i],
  ['hazards', /hazard|classif|\bghs\b|\bclp\b|h-?(?:code|statement|phrase)/i],
  ['density', /densit|specific gravity/i],
  ['percent', /%|percent|\bwt\b|w\/w|conc|content|range/i],
  ['unit', /^(?:unit|units|uom)$/i],
  ['amount', /amount|qty|quantity|weight|mass|volume/i],
  [
    'name',
    /name|ingredient|component|chemical|substance|material|description|constituent|^items?$|^products?$/i,
  ],
];

/** Headings of columns that the record has other places for; never taken for that of names. */
const notNames = /supplier|vendor|manufacturer|lot|batch|note|comment|price|cost|purpose|function|use\b/i;

/** What stands in place of a CAS number: nothing, or words that keep it back. */
const noNumber = /^(?:-+|n\/?a|none|not (?:available|assigned|applicable)|unknown|mixture|blend)$/i;
const keptBack = /proprietary|trade secret|confidential|withheld|undisclosed|\bCBI\b|not disclosed/i;

const balance = /^(?:balance|bal\.?|rest|remainder|q\.?\s?s\.?.*|to 100.*|ad 100.*)$/i;

/**
 * Reads a formula, or the composition on a supplier's sheet, from a spreadsheet's export: comma, semicolon or tab, with
 * a header in one of the first rows. Values stay as written, so that the reader of records says what is wrong.
 * @returns null where no header is found.
 */
export function formulaOfTable(text: string): TableFormula | null {
  const rows = cellsOf(text);
  const at = rows.findIndex(cells => {
    const found = columnsOf(cells);
    return found.has('name') || found.has('cas') ? found.size >= 2 : false;
  });
  if (at < 0) return null;
  const header = rows[at]!;
  const columns = columnsOf(header);
  // A column without a known heading holds the names where the others do not: a line is never left out for it.
  if (!columns.has('name')) {
    const first = header.findIndex(
      (heading, index) =>
        heading.trim() !== '' && !notNames.test(heading) && ![...columns.values()].includes(index),
    );
    if (first >= 0) columns.set('name', first);
  }
  const withheld: TableFormula['withheld'][number][] = [];
  const lines: TableLine[] = [];
  const left: TableFormula['left'][number][] = rows
    .slice(0, at)
    .flatMap((cells, index) =>
      blank(cells) ? [] : [{ row: index + 1, text: shown(cells), reason: 'before-header' as const }],
    );
  let decimalComma = false;
  const numbers = (written: string): string => {
    const plain = written.replace(/(\d),(\d{1,2}|\d{4,})(?!\d)/g, '$1.$2');
    if (plain !== written) decimalComma = true;
    return plain;
  };
  rows.slice(at + 1).forEach((cells, index) => {
    const row = at + index + 2;
    if (blank(cells)) return;
    const cell = (column: TableColumn): string => cells[columns.get(column) ?? -1]?.trim() ?? '';
    const name = cell('name') || cell('cas');
    if (/^(?:sub-?)?(?:total|sum)\b/i.test(name) || (name === '' && /total|sum/i.test(shown(cells))))
      left.push({ row, text: shown(cells), reason: 'total' });
    else if (name === '') left.push({ row, text: shown(cells), reason: 'no-name' });
    else {
      if (keptBack.test(cell('cas'))) withheld.push({ row, name, text: cell('cas') });
      lines.push({ row, name, ...values(cell, numbers) });
    }
  });
  return {
    headerRow: at + 1,
    columns: Object.fromEntries([...columns].map(([column, index]) => [column, header[index]!.trim()])),
    ignored: header.filter(
      (heading, index) => heading.trim() !== '' && ![...columns.values()].includes(index),
    ),
    lines,
    left,
    decimalComma,
    withheld,
  };
}

type Cell = (column: TableColumn) => string;

function values(cell: Cell, numbers: (written: string) => string): Omit<TableLine, 'row' | 'name'> {
  const [percent, amount] = [cell('percent'), cell('amount')];
  const written = amount === '' ? percent : amount;
  const unit = cell('unit');
  const hazards = hazardsOf(cell('hazards'));
  const much =
    balance.test(percent) || balance.test(amount)
      ? { amount: 'balance' }
      : amount !== '' && percent === ''
        ? { amount: numbers(/[a-z]/i.test(amount) || unit === '' ? amount : `${amount} ${unit}`) }
        : written === ''
          ? {}
          : { percent: numbers(percent) };
  return {
    ...(cell('cas') !== '' &&
      !noNumber.test(cell('cas')) &&
      !keptBack.test(cell('cas')) && { cas: cell('cas') }),
    ...much,
    ...(cell('density') !== '' && { density: numbers(cell('density')) }),
    ...(hazards.length > 0 && { hazards }),
  };
}

/** The hazards of a cell, one each: semicolons part hazards, and H-codes from their class. */
function hazardsOf(cell: string): readonly string[] {
  if (cell === '') return [];
  if (understandHazard(cell).ok) return [cell];
  const parts = cell
    .split(/[\n|;]|,(?![^(]*\))/)
    .map(part => part.trim())
    .filter(part => part !== '');
  const found: string[] = [];
  for (const part of parts) {
    const before = found.at(-1);
    const joined = before === undefined ? null : `${before}${/^cat/i.test(part) ? ', ' : '; '}${part}`;
    if (joined !== null && understandHazard(joined).ok) found[found.length - 1] = joined;
    else found.push(part);
  }
  return found;
}

function cellsOf(text: string): string[][] {
  const head = text.split('\n').slice(0, 20).join('\n');
  const count = (sign: string) => head.split(sign).length;
  const delimiter = ['\t', ';', ','].reduce((best, sign) => (count(sign) > count(best) ? sign : best));
  return parse(text, {
    bom: true,
    delimiter,
    relax_column_count: true,
    relax_quotes: true,
    skip_empty_lines: false,
  });
}

function columnsOf(cells: readonly string[]): Map<TableColumn, number> {
  const found = new Map<TableColumn, number>();
  cells.forEach((heading, index) => {
    const column = headings.find(([name, pattern]) => !found.has(name) && pattern.test(heading.trim()))?.[0];
    if (column && heading.trim().length < 60) found.set(column, index);
  });
  return found;
}

const blank = (cells: readonly string[]): boolean => cells.every(cell => cell.trim() === '');
const shown = (cells: readonly string[]): string =>
  cells
    .map(cell => cell.trim())
    .filter(cell => cell !== '')
    .join(', ')
    .slice(0, 80);
