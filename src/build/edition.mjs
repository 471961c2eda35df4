// The edition of the data and templates that a bundle holds, as src/reference/edition.ts reads it from the files.
import { rmSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

/** For `define` of esbuild. */
export async function definedEdition() {
  const outfile = `out/edition-${Math.random().toString(36).slice(2)}.mjs`;
  const entryPoints = ['src/reference/edition.ts'];
  await build({ entryPoints, outfile, bundle: true, format: 'esm', platform: 'node', logLevel: 'warning' });
  try {
    const { readEdition } = await import(pathToFileURL(outfile).href);
    return { LABELWRIGHT_EDITION: JSON.stringify(readEdition()) };
  } finally {
    rmSync(outfile);
  }
}
