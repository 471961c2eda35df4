import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { labelwright, workshop } from './_command.ts';

// Logs every file that the program or the loader of packages opens.
const logger = (log: string): string => `
import { syncBuiltinESMExports } from 'node:module';
import fs from 'node:fs';
const note = fs.appendFileSync;
for (const name of ['readFileSync', 'openSync', 'readFile', 'open', 'createReadStream']) {
  const original = fs[name];
  fs[name] = (path, ...rest) => { note(${JSON.stringify(log)}, path + '\\n'); return original(path, ...rest); };
}
syncBuiltinESMExports();
`;

interface Coverage {
  readonly result: readonly { readonly url: string }[];
}

/** What `npm run build` put into each file of the bundle. */
const { outputs } = JSON.parse(readFileSync('out/tools/bundle.json', 'utf8')) as {
  outputs: Record<string, { inputs: Record<string, { bytesInOutput: number }> }>;
};

/** Sources in the files of the bundle that the engine loaded. */
function ran(folder: string): string[] {
  return readdirSync(folder).flatMap(name => {
    const { result } = JSON.parse(readFileSync(join(folder, name), 'utf8')) as Coverage;
    const loaded = result.filter(({ url }) => url.startsWith('file:')).map(({ url }) => fileURLToPath(url));
    return loaded.flatMap(path => Object.keys(outputs[relative('.', path)]?.inputs ?? {}));
  });
}

/** What a call of the command opens and runs: files, modules of packages, modules of its own. */
function loadedBy(args: readonly string[]): string[] {
  const folder = workshop();
  const [log, hook, coverage] = [
    join(folder, 'opened.txt'),
    join(folder, 'logger.mjs'),
    join(folder, 'coverage'),
  ];
  writeFileSync(log, '');
  writeFileSync(hook, logger(log));
  const env = { NODE_OPTIONS: `--import=${pathToFileURL(hook)}`, NODE_V8_COVERAGE: coverage };
  const { status, err } = labelwright([...args, '--json'], { cwd: folder, env });
  expect(err).not.toContain('Error');
  expect(status).toBe(0);
  return [...readFileSync(log, 'utf8').split('\n'), ...ran(coverage)];
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
