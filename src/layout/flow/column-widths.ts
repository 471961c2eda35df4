import type { Millimetres } from '../../quantity/length.ts';

/** What a column wants: width of its longest word, and of its longest text on one line. */
export interface ColumnNeed {
  readonly least: Millimetres;
  readonly natural: Millimetres;
  /** Length of all its text on one line; default its longest text. */
  readonly text?: Millimetres;
}

/**
 * Widths of the columns of a table that fill `room`. Every column gets its longest word where that is possible.
 * Columns that want little get what they want; the others share the rest in proportion to the square root of their
 * text, so that they end at about one height and one long text does not starve the others. What nobody wants is
 * shared out evenly.
 */
export function columnWidths(needs: readonly ColumnNeed[], room: Millimetres): readonly Millimetres[] {
  const least = needs.map(need => need.least);
  const total = sum(least);
  if (total >= room) return least.map(width => (width / total) * room);
  const modest = needs.map(({ least: word, natural }) =>
    natural <= room / (2 * needs.length) ? Math.max(word, natural) : word,
  );
  const floor = sum(modest) < room ? modest : least;
  const at = (share: number) =>
    needs.map(({ natural, text = natural }, index) =>
      Math.max(floor[index]!, Math.min(natural, share * Math.sqrt(text))),
    );
  let [low, high] = [0, room];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (sum(at(middle)) <= room) low = middle;
    else high = middle;
  }
  const widths = at(low);
  const spare = room - sum(widths);
  return widths.map(width => width + Math.max(0, spare) / needs.length);
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
