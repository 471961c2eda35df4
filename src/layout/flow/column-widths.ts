import type { Millimetres } from '../../quantity/length.ts';

/** Least and natural width of a column: its longest word, its longest text on one line. */
export interface ColumnNeed {
  readonly least: Millimetres;
  readonly natural: Millimetres;
}

/**
 * Widths of the columns of a table that fill `room`. Every column gets its longest word where that is possible;
 * what is left goes to the columns that want more, in proportion to the square root of what they lack, so that one
 * long text does not starve the others; what nobody wants is shared out evenly.
 */
export function columnWidths(needs: readonly ColumnNeed[], room: Millimetres): readonly Millimetres[] {
  const least = needs.map(need => need.least);
  const total = sum(least);
  if (total >= room) return least.map(width => (width / total) * room);
  let widths = least;
  for (let round = 0; round < needs.length; round += 1) {
    const spare = room - sum(widths);
    const lacks = needs.map((need, at) => Math.sqrt(Math.max(0, need.natural - widths[at]!)));
    const lack = sum(lacks);
    if (spare <= 0 || lack === 0) break;
    widths = widths.map((width, at) => Math.min(needs[at]!.natural, width + (spare * lacks[at]!) / lack));
  }
  const spare = room - sum(widths);
  return widths.map(width => width + Math.max(0, spare) / needs.length);
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
