import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { labelwright, workshop } from './_command.ts';

// Logs every module that the loader asks for and every file that the program opens.
const logger = (log: string): string => `
import { register, syncBuiltinESMExports } from 'node:module';
import fs from 'node:fs';
const note = fs.appendFileSync;
const write = path => { if (typeof path === 'string' || path instanceof URL) note(${JSON.stringify(log)}, path + '\\n'); };
for (const name of ['readFileSync', 'openSync', 'readFile', 'open', 'createReadStream']) {
  const original = fs[name];
  fs[name] = (path, ...rest) => { write(path); return original(path, ...rest); };
}
for (const name of ['readFile', 'open']) {
  const original = fs.promises[name];
  fs.promises[name] = (path, ...rest) => { write(path); return original(path, ...rest); };
}
syncBuiltinESMExports();
const hooks = \`
import { appendFileSync } from 'node:fs';
export async function load(url, context, next) {
  appendFileSync(${JSON.stringify(log)}, url + '\\\\n');
  return next(url, context);
}\`;
register('data:text/javascript,' + encodeURIComponent(hooks));
`;

/** Sources that a call of the command loads: modules of other packages, and what the bundled files are made of. */
function loadedBy(args: readonly string[]): string[] {
  const folder = workshop();
  const [log, hook] = [join(folder, 'loaded.txt'), join(folder, 'logger.mjs')];
  writeFileSync(log, '');
  writeFileSync(hook, logger(log));
  const env = { NODE_OPTIONS: `--import=${pathToFileURL(hook)}`, NODE_NO_WARNINGS: '1' };
  const { status, err } = labelwright([...args, '--json'], { cwd: folder, env });
  expect(err).not.toContain('Error');
  expect(status).toBe(0);
  const paths = readFileSync(log, 'utf8')
    .split('\n')
    .map(line => (line.startsWith('file:') ? fileURLToPath(line) : line));
  return [...new Set(paths.flatMap(path => [path, ...madeOf(path)]))];
}

function madeOf(path: string): string[] {
  const map = `${path}.map`;
  if (!path.endsWith('.js') || !path.includes(join('out', 'dist')) || !existsSync(map)) return [];
  const { sources } = JSON.parse(readFileSync(map, 'utf8')) as { sources: string[] };
  return sources.map(source => relative('.', join(dirname(path), source)));
}

const touching = (loaded: readonly string[], word: RegExp): string[] =>
  loaded.filter(path => word.test(path));
const heavy = {
  fonts: /fontkit|roboto-condensed|src\/text\//,
  pdf: /pdf-lib|src\/pdf\//,
  'bar code drawing': /bwip-js/,
  templates: /handlebars/,
  'the record reader': /node_modules\/(zod|yaml)\/|src\/record\//,
  'the substance table': /harmonised/,
  'the law': /hazard-data\/(us-hcs|eu-clp|un-ghs)|src\/classify\//,
} as const;

describe('what a command loads', () => {
  it('gtin: nothing of fonts, PDF, records or tables', () => {
    const loaded = loadedBy(['gtin', '614141000418']);
    expect(touching(loaded, /src\/barcode\/gtin\.ts$/)).not.toEqual([]);
    for (const [what, word] of Object.entries(heavy)) expect(touching(loaded, word), what).toEqual([]);
  });

  it('classify: the record reader, the law and the table, and nothing of fonts or PDF', () => {
    const loaded = loadedBy(['classify', 'patio-cleaner.yaml']);
    for (const what of ['the record reader', 'the substance table', 'the law'] as const)
      expect(touching(loaded, heavy[what]), what).not.toEqual([]);
    for (const what of ['fonts', 'pdf', 'bar code drawing', 'templates'] as const)
      expect(touching(loaded, heavy[what]), what).toEqual([]);
  });

  it('label: all of it, so that the two above can fail', () => {
    const loaded = loadedBy(['label', 'patio-cleaner.yaml']);
    for (const [what, word] of Object.entries(heavy)) expect(touching(loaded, word), what).not.toEqual([]);
  });
});
