import { type ChildProcess, spawn } from 'node:child_process';
import { utimesSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { nodeEnvironment } from '../../src/environment/node.ts';
import { sha256 } from '../../src/provenance/inputs.ts';
import { MANIFEST, parseManifest } from '../../src/store/manifest.ts';
import { documentsIn, standing } from './_packets.ts';
import type { Variant } from './_variants.ts';

/** Bundles the writer, so that the engine can run it as it is. */
export async function bundleWriter(folder: string): Promise<string> {
  const outfile = join(folder, 'writer.mjs');
  await build({
    entryPoints: ['tests/store/_writer.ts'],
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    logLevel: 'error',
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
  });
  return outfile;
}

export interface Ended {
  readonly code: number | null;
  readonly signal: string | null;
  readonly said: string;
}

/** Starts a writer; gives the process and what becomes of it. */
export function startWriter(
  writer: string,
  args: readonly string[],
): { child: ChildProcess; ended: Promise<Ended> } {
  const child = spawn(process.execPath, [writer, ...args], { stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  child.stderr.on('data', (chunk: Buffer) => {
    said += chunk.toString();
  });
  const ended = new Promise<Ended>(resolve =>
    child.on('close', (code, signal) => resolve({ code, signal, said })),
  );
  return { child, ended };
}

/** What stands in a folder, seen without the store: a whole packet that the manifest vouches for, told, or a fault. */
export function seen(folder: string): Variant | 'nothing' | 'told' | 'fault' {
  const bytes = nodeEnvironment.files.read(join(folder, MANIFEST));
  const found = documentsIn(folder);
  if (!bytes) return Object.keys(found).length === 0 ? 'nothing' : 'fault';
  const manifest = parseManifest(bytes);
  if (!manifest) return 'fault';
  if (manifest.state !== 'current') return 'told';
  for (const variant of ['bottle', 'flask'] as const) {
    const wanted = standing(variant);
    if (
      Object.keys(found).length === Object.keys(wanted).length &&
      manifest.files.length === Object.keys(wanted).length &&
      manifest.files.every(
        ({ name, sha256: hash }) => found[name] === wanted[name] && hash === sha256(wanted[name] ?? ''),
      )
    )
      return variant;
  }
  return 'fault';
}

/** An hour goes by: the lock of a killed run has not been touched since. */
export function anHourLater(folder: string): void {
  const then = (Date.now() - 3_600_000) / 1000;
  try {
    utimesSync(join(folder, '.labelwright.lock'), then, then);
  } catch {
    // The run was killed before or after it held the lock.
  }
}
