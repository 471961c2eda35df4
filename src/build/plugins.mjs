// What esbuild does to sources on their way into the bundle.
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join, relative } from 'node:path';
import { packText } from './tables.mjs';

/** What figures and rows of an allocation table rest on is for readers of the data; no rule reads it. */
const leftOut = {
  'allocation.json': new Set(['sources', 'disagreements', 'notes']),
  'thresholds.json': new Set(['about', 'checked', 'datesSource', 'note', 'byClassSource']),
};
// Texts that are not held are named with their source; figures are not.
const compact = (path, text) => {
  const dropped = leftOut[basename(path)];
  const content = JSON.parse(text, (key, value) => (dropped?.has(key) ? undefined : value));
  if (content.figures)
    content.figures = JSON.parse(
      JSON.stringify(content.figures, (key, value) => (key === 'source' ? undefined : value)),
    );
  return JSON.stringify(content);
};

/** Below this size, in characters, a table is as small inside the code as beside it. */
const LEAST = 4000;

/**
 * Tables as text for JSON.parse, which starts faster than object literals; large ones packed beside the bundle, to a
 * sixth of their size.
 * @param beside folder of packed tables, one folder above each chunk; none where all stay inside
 */
export const tablesAsText = beside => ({
  name: 'tables-as-text',
  setup({ onLoad }) {
    onLoad({ filter: /hazard-data[\\/].*\.json$/ }, ({ path }) => {
      const text = compact(path, readFileSync(path, 'utf8'));
      if (!beside || text.length < LEAST)
        return { contents: `export default JSON.parse(${JSON.stringify(text)});`, loader: 'js' };
      const packed = `${relative('hazard-data', path)}.br`;
      packText(text, join(beside, packed));
      const place = JSON.stringify(`../hazard-data/${packed.replaceAll('\\', '/')}`);
      return {
        contents: `import { readFileSync } from 'node:fs';
          import { brotliDecompressSync } from 'node:zlib';
          export default JSON.parse(brotliDecompressSync(readFileSync(new URL(${place}, import.meta.url))).toString());`,
        loader: 'js',
      };
    });
  },
});

/** Encoders that the data of bar codes name. */
const encoders = readdirSync('src/barcode')
  .filter(name => name.endsWith('.json'))
  .flatMap(name => [...readFileSync(`src/barcode/${name}`, 'utf8').matchAll(/"encoder": "([\w-]+)"/g)])
  .map(([, encoder]) => encoder.replaceAll('-', '_'));

/** Of the hundred encoders of bwip-js, which are looked up by name, those that the data name. */
export const namedEncoders = {
  name: 'named-encoders',
  setup({ onResolve, onLoad }) {
    // A module that is imported when needed keeps all that it exports: its default alone is used.
    onResolve({ filter: /^bwip-js$/ }, () => ({ path: 'bwip-js', namespace: 'named-encoders' }));
    onLoad({ filter: /./, namespace: 'named-encoders' }, () => ({
      contents: `export { default } from 'bwip-js/generic';`,
      resolveDir: '.',
    }));
    onLoad({ filter: /bwipp\.mjs$/ }, ({ path }) => {
      const found = new Set();
      const contents = readFileSync(path, 'utf8').replace(
        /case "(\w+)":\s+return bwipp_\w+;/g,
        (row, encoder) => {
          if (!encoders.includes(encoder)) return '';
          found.add(encoder);
          return row;
        },
      );
      const lost = encoders.filter(encoder => !found.has(encoder));
      return lost.length > 0 ? { errors: [{ text: `bwip-js has no ${lost.join(', ')}` }] } : { contents };
    });
  },
};

/** Parts of libraries that are never called; each fails aloud if one is. */
const unused = {
  // The decoder of WOFF2, half a megabyte: the faces are TrueType.
  'brotli/decompress.js': `export default () => { throw new Error('WOFF2 is not read'); };`,
  // Metrics of the fourteen standard fonts of PDF: every font is embedded.
  '@pdf-lib/standard-fonts': `const none = new Proxy({}, { get() { throw new Error('no standard font is used'); } });
    export { none as Encodings, none as Font, none as FontNames };`,
  // Handlebars asks for it within `try` and does without.
  'source-map': `throw new Error('no source map is made');`,
};

export const withoutUnused = {
  name: 'without-unused',
  setup({ onResolve, onLoad }) {
    const names = Object.keys(unused);
    const exactly = new RegExp(`^(${names.map(name => name.replaceAll('.', '\\.')).join('|')})$`);
    onResolve({ filter: exactly }, ({ path }) => ({ path, namespace: 'unused' }));
    onLoad({ filter: /./, namespace: 'unused' }, ({ path }) => ({ contents: unused[path] }));
  },
};
