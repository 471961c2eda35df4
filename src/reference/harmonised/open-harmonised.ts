import { chooseEntry, type FoundEntry, only } from './choose-entry.ts';
import { harmonisedColumns, splitCells } from './columns.ts';
import { type HarmonisedEntry, readEntry } from './entry.ts';
import { type SoughtEntry, solutionsOf } from './entry-scopes.ts';
import { synonyms } from './synonyms.ts';

/** Harmonised classifications (CLP Annex VI Table 3) by number or name, as they apply on a date `YYYY-MM-DD`. */
export interface HarmonisedTable {
  /** The first entry of a CAS number by index number; null where none applies on the date. */
  byCas(cas: string, asOf: string): HarmonisedEntry | null;
  /** The entry of a substance in a mixture, with those that were not taken and the one that comes next. */
  find(sought: Omit<SoughtEntry, 'name'>, asOf: string): FoundEntry;
  /** All entries of a CAS number, with those of its solutions, that apply on the date, by index number. */
  candidates(cas: string, asOf: string): readonly HarmonisedEntry[];
  /** Rows of a CAS number that apply only after the date, the earliest first. */
  later(cas: string, asOf: string): readonly HarmonisedEntry[];
  /** The entry of an index number; of a group its first member. */
  byIndex(index: string, asOf: string): HarmonisedEntry | null;
  /** The entry of a name or synonym, exact but for case. */
  byName(name: string, asOf: string): HarmonisedEntry | null;
  /** CAS number and name of every row that has both, in the order of the file. */
  names(): Generator<{ readonly cas: string; readonly name: string }>;
  /** Every row of every date, in the order of the file. */
  allRows(): Generator<HarmonisedEntry>;
}

const LINE_END = 0x0a;

/** Opens the compiled table; nothing is read until something is asked for, and then only the lines that hold it. */
export function openHarmonised(file: Uint8Array): HarmonisedTable {
  const bytes = Buffer.from(file.buffer, file.byteOffset, file.byteLength);
  const cache = new Map<string, readonly HarmonisedEntry[]>();
  let namesToLines: Map<string, string[]> | null = null;

  const lineAt = (start: number): string => {
    const end = bytes.indexOf(LINE_END, start);
    return bytes.toString('utf8', start, end < 0 ? bytes.length : end);
  };

  const once = (key: string, find: () => Iterable<number>): readonly HarmonisedEntry[] => {
    let rows = cache.get(key);
    if (!rows) {
      rows = [...find()].map(start => readLine(lineAt(start)));
      cache.set(key, rows);
    }
    return rows;
  };

  const rowsOfKey = (key: string) => once(key, () => linesOfKey(bytes, key));
  const rowsOfIndex = (index: string) => once(`index ${index}`, () => linesWith(bytes, `\t${index}\t`));

  const lineNames = (): Map<string, string[]> => {
    if (namesToLines) return namesToLines;
    const map = new Map<string, string[]>();
    for (const line of bytes.toString('utf8').split('\n').slice(1)) {
      for (const name of synonyms(line.split('\t', NAME_CELL + 1)[NAME_CELL] ?? '')) {
        const lines = map.get(name);
        if (lines) lines.push(line);
        else map.set(name, [line]);
      }
    }
    namesToLines = map;
    return map;
  };

  const rowsOfCas = (cas: string): readonly HarmonisedEntry[] => {
    const solutions = solutionsOf(cas);
    return solutions.length > 0 ? [...rowsOfKey(cas), ...solutions.flatMap(rowsOfIndex)] : rowsOfKey(cas);
  };
  const candidates = (cas: string, asOf: string) => inForce(rowsOfCas(cas), asOf);
  const later = (cas: string, asOf: string) => {
    const next = rowsOfCas(cas).filter(({ appliesFrom }) => appliesFrom > asOf);
    return next.length < 2 ? next : next.sort((a, b) => compare(a.appliesFrom, b.appliesFrom));
  };

  return {
    byCas: (cas, asOf) => candidates(cas, asOf)[0] ?? null,
    find(sought, asOf) {
      const { cas } = sought;
      if (cas === null) return only(null);
      const chosen = chooseEntry(candidates(cas, asOf), sought);
      const next = later(cas, asOf);
      const { entry, others, by } = chosen;
      if (next.length === 0) return { entry, others, by, later: null };
      const own = next.filter(({ index }) => index === entry?.index);
      return { entry, others, by, later: chooseEntry(own.length > 0 ? own.slice(0, 1) : next, sought).entry };
    },
    candidates,
    later,
    byIndex: (index, asOf) => inForce(rowsOfIndex(index), asOf)[0] ?? null,
    byName: (name, asOf) =>
      inForce((lineNames().get(name.trim().toLowerCase()) ?? []).map(readLine), asOf)[0] ?? null,
    *names() {
      for (const line of bytes.toString('utf8').split('\n').slice(1)) {
        const cells = line.split('\t', NAME_CELL + 1);
        const [key = '', index] = cells;
        if (key !== '' && key !== index) yield { cas: key, name: cells[NAME_CELL] ?? '' };
      }
    },
    *allRows() {
      for (let at = nextLine(bytes, 0); at < bytes.length; at = nextLine(bytes, at))
        yield readLine(lineAt(at));
    },
  };
}

const NAME_CELL = harmonisedColumns.indexOf('name');

const readLine = (line: string): HarmonisedEntry => readEntry(splitCells(line));

const nextLine = (bytes: Buffer, at: number): number => {
  const end = bytes.indexOf(LINE_END, at);
  return end < 0 ? bytes.length : end + 1;
};

/** Starts of the lines of a key; the lines are sorted by it, so the first is found by halving. */
function* linesOfKey(bytes: Buffer, key: string): Generator<number> {
  const needle = Buffer.from(`${key}\t`);
  const order = (at: number) =>
    bytes.compare(needle, 0, needle.length, at, Math.min(at + needle.length, bytes.length));
  // The first line holds the names of the columns.
  let low = nextLine(bytes, 0);
  let high = bytes.length;
  while (low < high) {
    const start = Math.max(low, bytes.lastIndexOf(LINE_END, Math.max((low + high) >> 1, 1) - 1) + 1);
    if (order(start) < 0) low = nextLine(bytes, start);
    else high = start;
  }
  for (let at = low; at < bytes.length && order(at) === 0; at = nextLine(bytes, at)) yield at;
}

function* linesWith(bytes: Buffer, text: string): Generator<number> {
  for (let at = bytes.indexOf(text); at >= 0; at = bytes.indexOf(text, at + 1))
    yield bytes.lastIndexOf(LINE_END, at) + 1;
}

/** Of each index number the row with the latest date not after `asOf`, by index number. */
function inForce(rows: readonly HarmonisedEntry[], asOf: string): HarmonisedEntry[] {
  if (rows.length === 1) return rows[0]!.appliesFrom <= asOf ? [rows[0]!] : [];
  const latest = new Map<string, HarmonisedEntry>();
  for (const row of rows) {
    const present = latest.get(row.index);
    if (row.appliesFrom <= asOf && (!present || row.appliesFrom > present.appliesFrom))
      latest.set(row.index, row);
  }
  return [...latest.values()].sort((a, b) => compare(a.index, b.index));
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
