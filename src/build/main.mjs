// Bundles the command line and the library with all that they need into out/dist, which is what a package holds;
// tools for developers go to out/tools. Declarations come from the type checker.
import { execFileSync } from 'node:child_process';
import { chmodSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { build } from 'esbuild';
import { pruneDeclarations } from './declarations.mjs';
import { definedEdition } from './edition.mjs';
import { packagesIn, writeNotices } from './notices.mjs';
import { namedEncoders, tablesAsText, withoutUnused } from './plugins.mjs';
import { pack, packTables } from './tables.mjs';

// Locks come as CommonJS, which asks for modules of Node.js by require.
const banner = {
  js: "import { createRequire as makeRequire } from 'node:module'; const require = makeRequire(import.meta.url);",
};

mkdirSync('out', { recursive: true });
const options = {
  define: await definedEdition(),
  banner,
  outbase: 'src',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  chunkNames: 'chunks/[hash]',
  alias: {
    // The build of yaml for browsers is the one in ES modules: it bundles, and nothing of it needs a browser.
    yaml: './node_modules/yaml/browser/index.js',
    // Templates come as text: Handlebars needs no loader of files.
    handlebars: './node_modules/handlebars/dist/cjs/handlebars.js',
  },
  plugins: [namedEncoders, withoutUnused],
  // Draws PNG where it is installed.
  external: ['@napi-rs/canvas'],
  minify: true,
  metafile: true,
  legalComments: 'none',
  logLevel: 'warning',
};

/** Faces of the documents, found beside the bundle by src/environment/font-files.ts. */
const fonts = '@expo-google-fonts/roboto-condensed';
const faces = [
  '400Regular/RobotoCondensed_400Regular.ttf',
  '700Bold/RobotoCondensed_700Bold.ttf',
  '400Regular_Italic/RobotoCondensed_400Regular_Italic.ttf',
];

for (const folder of ['out/dist', 'out/tools']) rmSync(folder, { recursive: true, force: true });
// Entries and chunks are all one folder deep, so that fonts are at the same place from each.
const { metafile } = await build({
  ...options,
  plugins: [tablesAsText('out/dist/hazard-data'), ...options.plugins],
  outdir: 'out/dist',
  entryPoints: { 'library/index': 'src/index.ts', 'cli/main': 'src/cli/main.ts' },
});
await build({
  ...options,
  plugins: [tablesAsText(null), ...options.plugins],
  outdir: 'out/tools',
  entryPoints: ['cli/demo', 'bench/main', 'generate/main'].map(name => `src/${name}.ts`),
});
mkdirSync('out/dist/fonts');
for (const face of faces) pack(`node_modules/${fonts}/${face}`, `out/dist/fonts/${basename(face)}.br`);
packTables('hazard-data', 'out/dist/hazard-data');
for (const schema of readdirSync('templates').filter(name => name.endsWith('.schema.json')))
  writeFileSync(
    `out/dist/${schema}`,
    JSON.stringify(JSON.parse(readFileSync(`templates/${schema}`, 'utf8'))),
  );
writeFileSync('out/tools/bundle.json', JSON.stringify(metafile));
writeNotices('out/dist/NOTICES.txt', [...packagesIn(metafile), fonts]);
chmodSync('out/dist/cli/main.js', 0o755);
execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.build.json'], {
  stdio: 'inherit',
});
pruneDeclarations('out/dist/types');
