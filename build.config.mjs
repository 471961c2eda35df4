// Bundles the command line and the library into out/dist; declarations come from the type checker.
import { execFileSync } from 'node:child_process';
import { chmodSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { build } from 'esbuild';
import { definedEdition } from './build/edition.mjs';

/** What each row of an allocation table rests on is for readers of the data; no rule reads it. */
const leftOut = new Set(['sources', 'disagreements', 'notes']);
const compact = (path, text) =>
  JSON.stringify(
    JSON.parse(text, (key, value) =>
      path.endsWith('allocation.json') && leftOut.has(key) ? undefined : value,
    ),
  );

/** Tables start faster as text for JSON.parse than as object literals. */
const jsonAsText = {
  name: 'json-as-text',
  setup({ onLoad }) {
    onLoad({ filter: /hazard-data[\\/].*\.json$/ }, ({ path }) => ({
      contents: `export default JSON.parse(${JSON.stringify(compact(path, readFileSync(path, 'utf8')))});`,
      loader: 'js',
    }));
  },
};

const define = await definedEdition();

const options = {
  define,
  outbase: 'src',
  outdir: 'out/dist',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  chunkNames: 'chunks/[name]-[hash]',
  external: ['pdf-lib', 'fontkit', 'bwip-js', 'handlebars', 'proper-lockfile', '@expo-google-fonts/*'],
  // The build of yaml for browsers is the one in ES modules: it bundles, and nothing of it needs a browser.
  alias: { yaml: './node_modules/yaml/browser/index.js' },
  plugins: [jsonAsText],
  minifyWhitespace: true,
  minifySyntax: true,
  sourcemap: true,
  logLevel: 'warning',
};

/** One file without modules, so that the engine can keep what it compiled; see src/cli/program.ts. */
const program = {
  ...options,
  entryPoints: { 'cli/program': 'src/cli/main.ts' },
  outExtension: { '.js': '.cjs' },
  splitting: false,
  format: 'cjs',
  supported: { 'dynamic-import': false },
  banner: { js: "const importMetaUrl = require('node:url').pathToFileURL(__filename).href;" },
  define: { ...define, 'import.meta.url': 'importMetaUrl' },
  sourcemap: false,
};

/** Only regular expressions are left with other characters; without them the file is read byte by byte. */
function toAscii(file) {
  const escaped = sign => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;
  writeFileSync(file, readFileSync(file, 'utf8').replace(/[^\0-\x7f]/g, escaped));
}

/** Each beside the program that it loads. */
const starters = {
  ...options,
  entryPoints: { 'cli/main': 'src/cli/start.ts', 'cli/compile': 'src/cli/compile.ts' },
  splitting: false,
};

const modules = {
  ...options,
  entryPoints: ['index', 'cli/demo', 'bench/main', 'generate/main'].map(name => `src/${name}.ts`),
};

rmSync('out/dist', { recursive: true, force: true });
for (const each of [program, starters, modules]) await build(each);
toAscii('out/dist/cli/program.cjs');
execFileSync(process.execPath, ['out/dist/cli/compile.js'], { stdio: 'inherit' });
chmodSync('out/dist/cli/main.js', 0o755);
execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.build.json'], {
  stdio: 'inherit',
});
