/** A font program with some of its glyphs (OpenType specification, 1.9). */

/** Tables of a subset in a PDF, in the order in which they are written (ISO 32000-1 9.9). */
const TABLES = ['head', 'hhea', 'loca', 'maxp', 'cvt ', 'prep', 'glyf', 'hmtx', 'fpgm'] as const;
const NEEDED = ['head', 'hhea', 'loca', 'maxp', 'glyf', 'hmtx'];

type TableName = (typeof TABLES)[number];

/** Flags of a component of a composite glyph. */
const WORDS = 0x1;
const SCALE = 0x8;
const MORE = 0x20;
const TWO_SCALES = 0x40;
const FOUR_SCALES = 0x80;

const TAG = Buffer.from('true', 'latin1');

function tablesOf(font: Buffer): ReadonlyMap<string, Buffer> {
  const tables = new Map<string, Buffer>();
  for (let at = 0; at < font.readUInt16BE(4); at += 1) {
    const row = 12 + 16 * at;
    const offset = font.readUInt32BE(row + 8);
    const name = font.toString('latin1', row, row + 4);
    tables.set(name, font.subarray(offset, offset + font.readUInt32BE(row + 12)));
  }
  return tables;
}

/** Places of the numbers of the components of a glyph; none in a simple one. */
function componentsOf(glyph: Buffer): readonly number[] {
  const places: number[] = [];
  if (glyph.length === 0 || glyph.readInt16BE(0) >= 0) return places;
  for (let at = 10, flags = MORE; flags & MORE; ) {
    flags = glyph.readUInt16BE(at);
    places.push(at + 2);
    at += 4 + (flags & WORDS ? 4 : 2);
    if (flags & SCALE) at += 2;
    else if (flags & TWO_SCALES) at += 4;
    else if (flags & FOUR_SCALES) at += 8;
  }
  return places;
}

/**
 * The part of a TrueType font that shows some glyphs, without the tables that a PDF does not need.
 * @param glyphs ids by code, the first of them 0; one may stand there twice
 * @throws RangeError where the font lacks a table or a glyph
 */
export function subset(bytes: Uint8Array, glyphs: readonly number[]): Uint8Array {
  const source = tablesOf(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength));
  const missing = NEEDED.filter(name => !source.has(name));
  if (missing.length > 0) throw new RangeError(`the font has no table ${missing.join(', ')}`);
  const table = (name: TableName): Buffer => source.get(name)!;
  const long = table('head').readInt16BE(50) !== 0;
  const placeOf = (id: number): number =>
    long ? table('loca').readUInt32BE(4 * id) : 2 * table('loca').readUInt16BE(2 * id);

  const ids = [...glyphs];
  const codes = new Map<number, number>();
  for (const [code, id] of ids.entries()) if (!codes.has(id)) codes.set(id, code);
  const outlines: Buffer[] = [];
  for (let code = 0; code < ids.length; code += 1) {
    const id = ids[code]!;
    const found = table('glyf').subarray(placeOf(id), placeOf(id + 1));
    const places = componentsOf(found);
    const outline = places.length > 0 ? Buffer.from(found) : found;
    for (const place of places) {
      const component = outline.readUInt16BE(place);
      const known = codes.get(component) ?? ids.push(component) - 1;
      codes.set(component, known);
      outline.writeUInt16BE(known, place);
    }
    outlines.push(outline);
  }

  const hhea = Buffer.from(table('hhea'));
  const measured = hhea.readUInt16BE(34);
  const hmtx = Buffer.alloc(4 * ids.length);
  for (const [code, id] of ids.entries()) {
    const own = table('hmtx').readUInt16BE(4 * Math.min(id, measured - 1));
    const bearing = id < measured ? 4 * id + 2 : 4 * measured + 2 * (id - measured);
    hmtx.writeUInt16BE(own, 4 * code);
    hmtx.writeInt16BE(table('hmtx').readInt16BE(bearing), 4 * code + 2);
  }
  hhea.writeUInt16BE(ids.length, 34);
  const maxp = Buffer.from(table('maxp'));
  maxp.writeUInt16BE(ids.length, 4);
  const loca = Buffer.alloc((ids.length + 1) * (long ? 4 : 2));
  let end = 0;
  for (let code = 0; code <= ids.length; code += 1) {
    if (long) loca.writeUInt32BE(end, 4 * code);
    else loca.writeUInt16BE(end / 2, 2 * code);
    end += outlines[code]?.length ?? 0;
  }
  const made: Partial<Record<TableName, Buffer>> = { hhea, hmtx, maxp, loca, glyf: Buffer.concat(outlines) };
  const tables = TABLES.flatMap(name => {
    const content = made[name] ?? source.get(name);
    return content ? [{ name, content }] : [];
  });
  return Uint8Array.from(Buffer.concat([directory(tables), ...tables.map(({ content }) => content)]));
}

/** Where the tables stand; sums over them are for whoever installs a font. */
function directory(tables: readonly { readonly name: TableName; readonly content: Buffer }[]): Buffer {
  const head = Buffer.alloc(12 + 16 * tables.length);
  TAG.copy(head);
  const power = 2 ** Math.floor(Math.log2(tables.length));
  head.writeUInt16BE(tables.length, 4);
  head.writeUInt16BE(16 * power, 6);
  head.writeUInt16BE(Math.log2(power), 8);
  head.writeUInt16BE(16 * (tables.length - power), 10);
  let place = head.length;
  for (const [at, { name, content }] of tables.entries()) {
    const row = 12 + 16 * at;
    head.write(name, row, 'latin1');
    head.writeUInt32BE(place, row + 8);
    head.writeUInt32BE(content.length, row + 12);
    place += content.length;
  }
  return head;
}
