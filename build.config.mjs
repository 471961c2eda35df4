// Bundles the command line and the library into out/dist; declarations come from the type checker.
import { execFileSync } from 'node:child_process';
import { chmodSync, existsSync, rmSync } from 'node:fs';
import { build } from 'esbuild';

const entryPoints = ['index', 'cli/main', 'cli/demo', 'bench/main', 'generate/main']
  .map(name => `src/${name}.ts`)
  .filter(path => existsSync(path));

rmSync('out/dist', { recursive: true, force: true });
await build({
  entryPoints,
  outbase: 'src',
  outdir: 'out/dist',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  chunkNames: 'chunks/[name]-[hash]',
  external: ['pdf-lib', 'fontkit', 'yaml', 'bwip-js', 'handlebars', '@expo-google-fonts/*'],
  sourcemap: true,
  logLevel: 'warning',
});
if (existsSync('out/dist/cli/main.js')) chmodSync('out/dist/cli/main.js', 0o755);
execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.build.json'], {
  stdio: 'inherit',
});
