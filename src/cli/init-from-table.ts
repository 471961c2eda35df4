import type { TableFormula } from '../record/from-table.ts';

const reasons = {
  'before-header': 'stands above the header',
  total: 'is a total',
  'no-name': 'has no name',
} as const;

/** What was read of a table, and what was not, a line each. */
export function tableText({
  headerRow,
  columns,
  ignored,
  lines,
  left,
  decimalComma,
  withheld,
}: TableFormula): readonly string[] {
  const understood = Object.entries(columns).map(([column, heading]) => `${column} from "${heading}"`);
  return [
    `header in row ${headerRow}: ${understood.join(', ')}`,
    ...(ignored.length > 0 ? [`columns not read: ${ignored.map(heading => `"${heading}"`).join(', ')}`] : []),
    `${lines.length} lines read`,
    ...left.map(({ row, text, reason }) => `row ${row} not read, it ${reasons[reason]}: ${text}`),
    ...withheld.map(
      ({ row, name, text }) =>
        `row ${row}: "${text}" is no CAS number and is left out; give ${name} its hazards from the supplier's sheet`,
    ),
    ...(decimalComma ? ['decimal commas are read as decimal points'] : []),
  ];
}

/** A name as part of a file name. */
export const fileName = (name: string): string =>
  name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60) || 'record';
