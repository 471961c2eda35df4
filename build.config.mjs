// Bundles the command line and the library into out/dist; declarations come from the type checker.
import { execFileSync } from 'node:child_process';
import { chmodSync, readFileSync, rmSync } from 'node:fs';
import { build } from 'esbuild';

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

const options = {
  outbase: 'src',
  outdir: 'out/dist',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  chunkNames: 'chunks/[name]-[hash]',
  external: ['pdf-lib', 'fontkit', 'bwip-js', 'handlebars', '@expo-google-fonts/*'],
  // The build of yaml for browsers is the one in ES modules: it bundles, and nothing of it needs a browser.
  alias: { yaml: './node_modules/yaml/browser/index.js' },
  plugins: [jsonAsText],
  minifyWhitespace: true,
  minifySyntax: true,
  sourcemap: true,
  logLevel: 'warning',
};

rmSync('out/dist', { recursive: true, force: true });
// The command line by itself, so that a command loads few files and nothing that only the others use.
await build({ ...options, entryPoints: ['src/cli/main.ts'] });
await build({ ...options, entryPoints: ['src/index.ts'] });
await build({ ...options, entryPoints: ['src/cli/demo.ts', 'src/bench/main.ts', 'src/generate/main.ts'] });
chmodSync('out/dist/cli/main.js', 0o755);
execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.build.json'], {
  stdio: 'inherit',
});
