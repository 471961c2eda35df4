// Tables that are read as they stand, packed to a tenth of their size.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { brotliCompressSync, constants } from 'node:zlib';

/** Packs every table below a folder, those of sources/ excepted, to the same place below another. */
export function packTables(from, to) {
  for (const { parentPath, name } of readdirSync(from, { recursive: true, withFileTypes: true })) {
    const path = join(parentPath, name);
    if (!name.endsWith('.tsv') || path.startsWith(join(from, 'sources'))) continue;
    const packed = join(to, `${relative(from, path)}.br`);
    pack(path, packed);
  }
}

/** Packs a file with brotli. */
export const pack = (from, to) => packText(readFileSync(from), to);

/** Packs text or bytes with brotli. */
export function packText(text, to) {
  const bytes = Buffer.from(text);
  const params = {
    [constants.BROTLI_PARAM_LGWIN]: constants.BROTLI_MAX_WINDOW_BITS,
    [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length,
  };
  mkdirSync(dirname(to), { recursive: true });
  writeFileSync(to, brotliCompressSync(bytes, { params }));
}
