/**
 * A figure of the law, or a table of figures, as it stands from one date on. The build leaves out what no rule reads:
 * `source` and `checked`.
 */
export interface Figure {
  /** A figure, or the named figures of one paragraph; absent where the paragraph alone is asked for. */
  readonly value?: unknown;
  /** In place of `value`: rows that name their own paragraphs. */
  readonly table?: unknown;
  /** Paragraph of the instrument. */
  readonly cite: string;
  /** Where it was read, or that it is from memory. */
  readonly source?: string;
  /** When that was, YYYY-MM-DD. */
  readonly checked?: string;
}

/** Figures by name, each by the date from which it is in force. */
export type Dated = { readonly [name: string]: Dated | Readonly<Record<string, Figure>> | null };

const DATE = /^\d{4}-\d\d-\d\d$/;

/** Of several dates the newest up to a day, YYYY-MM-DD; null where none is. */
export const newestOn = (dates: readonly string[], day: string): string | null =>
  dates
    .filter(date => date <= day)
    .sort()
    .at(-1) ?? null;

/**
 * The figures in force on a day: named figures of a paragraph with their `cite`, a single figure or a table as it is.
 * One that comes into force later is left out.
 * @param day YYYY-MM-DD
 */
export function inForceOn(dated: Dated, day: string): unknown {
  const found: [string, unknown][] = [];
  for (const [name, node] of Object.entries(dated)) {
    if (node === null || !isByDate(node)) {
      found.push([name, node && inForceOn(node as Dated, day)]);
      continue;
    }
    const date = newestOn(Object.keys(node), day);
    if (date !== null) found.push([name, plain(node[date]!)]);
  }
  return Object.fromEntries(found);
}

const isByDate = (node: object): node is Readonly<Record<string, Figure>> => {
  const names = Object.keys(node);
  return names.length > 0 && names.every(name => DATE.test(name));
};

function plain({ value, table, cite }: Figure): unknown {
  if (table !== undefined) return table;
  if (value === undefined) return { cite };
  return typeof value === 'object' ? { ...value, cite } : value;
}
