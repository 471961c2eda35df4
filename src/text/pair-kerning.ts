/** Kerning by pairs from the GPOS table of a font (OpenType specification, 1.9, "GPOS": lookup type 2). */

/** What is added to the advance of a glyph before another, in units of the font. */
export type PairKerning = (first: number, second: number) => number;

const LATIN = ['latn', 'DFLT'];
/** Substitutions that shaping of Latin applies, and that could change a glyph by its neighbours. */
const BY_NEIGHBOURS = ['calt', 'rclt', 'rlig', 'clig'];
const PAIRS = 2;
const EXTENSION = 9;
/** Value formats: nothing, or an advance along the line alone. */
const ADVANCE = 0x4;

interface LayoutTable {
  readonly view: DataView;
  /** Lookups by the tag of their feature, of the default language of Latin. */
  readonly lookups: ReadonlyMap<string, readonly number[]>;
}

function tableOf(font: Uint8Array, wanted: string): DataView | null {
  const file = new DataView(font.buffer, font.byteOffset, font.byteLength);
  for (let at = 0; at < file.getUint16(4); at += 1) {
    const row = 12 + 16 * at;
    if (tagAt(file, row) !== wanted) continue;
    return new DataView(font.buffer, font.byteOffset + file.getUint32(row + 8), file.getUint32(row + 12));
  }
  return null;
}

const tagAt = (view: DataView, at: number): string =>
  String.fromCharCode(...[0, 1, 2, 3].map(place => view.getUint8(at + place)));

/** Scripts, features and lookups stand alike in GPOS and GSUB (OpenType, "Common table formats"). */
function layoutTable(font: Uint8Array, name: 'GPOS' | 'GSUB'): LayoutTable | null {
  const view = tableOf(font, name);
  if (!view) return null;
  const [scripts, features] = [view.getUint16(4), view.getUint16(6)];
  const places = new Map<string, number>();
  for (let at = 0; at < view.getUint16(scripts); at += 1) {
    const row = scripts + 2 + 6 * at;
    places.set(tagAt(view, row), scripts + view.getUint16(row + 4));
  }
  const script = LATIN.map(tag => places.get(tag)).find(place => place !== undefined);
  const language = script === undefined ? 0 : view.getUint16(script);
  const lookups = new Map<string, readonly number[]>();
  if (script === undefined || language === 0) return { view, lookups };
  const system = script + language;
  for (let at = 0; at < view.getUint16(system + 4); at += 1) {
    const row = features + 2 + 6 * view.getUint16(system + 6 + 2 * at);
    const feature = features + view.getUint16(row + 4);
    const numbers: number[] = [];
    for (let index = 0; index < view.getUint16(feature + 2); index += 1)
      numbers.push(view.getUint16(feature + 4 + 2 * index));
    lookups.set(tagAt(view, row), numbers);
  }
  return { view, lookups };
}

/** Place of a glyph in a coverage table; null where it is not covered. */
function coverage(view: DataView, table: number, glyph: number): number | null {
  const format = view.getUint16(table);
  let [low, high] = [0, view.getUint16(table + 2) - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    const row = table + 4 + (format === 1 ? 2 : 6) * middle;
    const from = view.getUint16(row);
    const to = format === 1 ? from : view.getUint16(row + 2);
    if (glyph < from) high = middle - 1;
    else if (glyph > to) low = middle + 1;
    else return format === 1 ? middle : view.getUint16(row + 4) + glyph - from;
  }
  return null;
}

/** Class of a glyph; 0 where the table names none. */
function classOf(view: DataView, table: number, glyph: number): number {
  if (view.getUint16(table) === 1) {
    const at = glyph - view.getUint16(table + 2);
    return at >= 0 && at < view.getUint16(table + 4) ? view.getUint16(table + 6 + 2 * at) : 0;
  }
  let [low, high] = [0, view.getUint16(table + 2) - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    const row = table + 4 + 6 * middle;
    if (glyph < view.getUint16(row)) high = middle - 1;
    else if (glyph > view.getUint16(row + 2)) low = middle + 1;
    else return view.getUint16(row + 4);
  }
  return 0;
}

/** What a subtable says of a pair; null where it says nothing, so that the next is asked. */
function adjustment(view: DataView, table: number, first: number, second: number): number | null {
  const covered = coverage(view, table + view.getUint16(table + 2), first);
  if (covered === null) return null;
  const size = view.getUint16(table + 4) === ADVANCE ? 2 : 0;
  if (view.getUint16(table) === 1) {
    const set = table + view.getUint16(table + 10 + 2 * covered);
    let [low, high] = [0, view.getUint16(set) - 1];
    while (low <= high) {
      const middle = (low + high) >> 1;
      const row = set + 2 + (2 + size) * middle;
      const glyph = view.getUint16(row);
      if (second < glyph) high = middle - 1;
      else if (second > glyph) low = middle + 1;
      else return size === 0 ? 0 : view.getInt16(row + 2);
    }
    return null;
  }
  const one = classOf(view, table + view.getUint16(table + 8), first);
  const two = classOf(view, table + view.getUint16(table + 10), second);
  const place = table + 16 + size * (one * view.getUint16(table + 14) + two);
  return size === 0 ? 0 : view.getInt16(place);
}

/** Subtables of the lookups of a feature; null where one is of another kind than pairs of advances. */
function subtablesOf({ view, lookups }: LayoutTable, feature: string): readonly (readonly number[])[] | null {
  const list = view.getUint16(8);
  const found: number[][] = [];
  for (const number of [...(lookups.get(feature) ?? [])].sort((a, b) => a - b)) {
    const lookup = list + view.getUint16(list + 2 + 2 * number);
    const tables: number[] = [];
    for (let at = 0; at < view.getUint16(lookup + 4); at += 1) {
      let table = lookup + view.getUint16(lookup + 6 + 2 * at);
      let type = view.getUint16(lookup);
      if (type === EXTENSION) {
        type = view.getUint16(table + 2);
        table += view.getUint32(table + 4);
      }
      const [one, two] = [view.getUint16(table + 4), view.getUint16(table + 6)];
      if (type !== PAIRS || (one !== 0 && one !== ADVANCE) || two !== 0) return null;
      tables.push(table);
    }
    found.push(tables);
  }
  return found;
}

/**
 * The kerning of a font for Latin text, where pairs of neighbours settle it: null where the font has substitutions by
 * neighbours or another kind of kerning, so that each text is to be set as a whole.
 */
export function pairKerning(font: Uint8Array): PairKerning | null {
  const [positions, substitutions] = [layoutTable(font, 'GPOS'), layoutTable(font, 'GSUB')];
  if (!positions || BY_NEIGHBOURS.some(tag => substitutions?.lookups.has(tag))) return null;
  const lookups = subtablesOf(positions, 'kern');
  if (!lookups) return null;
  const { view } = positions;
  return (first, second) => {
    let sum = 0;
    for (const tables of lookups)
      for (const table of tables) {
        const value = adjustment(view, table, first, second);
        if (value === null) continue;
        sum += value;
        break;
      }
    return sum;
  };
}
