import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';
import type { Environment, OutputFiles } from '../../src/environment/environment.ts';
import { nodeEnvironment } from '../../src/environment/node.ts';
import type { Delivery, OutputFile } from '../../src/store/delivery.ts';
import { documentsOf, inputsFor, type Variant } from './_variants.ts';

export const product = { name: 'Kerbstone Patio Cleaner', code: 'KP-946' };

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

/** A shop with one record, of which the packets are variants, and the place of its packet. */
export function shop(): { root: string; record: string; folder: string } {
  const root = mkdtempSync(join(tmpdir(), 'labelwright-store-'));
  folders.push(root);
  const record = join(root, 'product.yaml');
  writeFileSync(record, 'labelwright: product/1\n');
  return { root, record, folder: join(root, 'out', product.code) };
}

/** A whole packet to be delivered. */
export const delivery = (
  folder: string,
  record: string,
  variant: Variant,
  more: Partial<Delivery> = {},
): Delivery => ({
  folder,
  product,
  inputs: inputsFor(record, variant),
  asOf: '2026-11-25',
  files: documentsOf(variant),
  whole: true,
  missing: [],
  replace: false,
  ...more,
});

/** This computer, where no other process writes: the lock is given at once. */
export const alone: Environment = {
  ...nodeEnvironment,
  now: () => new Date('2026-11-26T12:00:00Z'),
  lock: async () => ({ ours: () => true, release: async () => {} }),
};

const changing = [
  'makeFolder',
  'writeFile',
  'rename',
  'claim',
  'remove',
  'removeEmpty',
  'flushFolder',
] as const;

/** The process is gone: nothing that it would have done after happens. */
export class Killed extends Error {}

/** A computer whose operations that change the disk are counted, and may be stopped before any of them. */
function guarded(before: (number: number, write: (() => void) | null) => void): Environment {
  let count = 0;
  const files = { ...alone.files } as Record<string, unknown>;
  for (const name of changing) {
    const real = alone.files[name] as (...args: unknown[]) => unknown;
    files[name] = (...args: unknown[]) => {
      const [path, bytes] = args as [string, Uint8Array];
      // A file is left half written.
      const half = () => writeFileSync(path, bytes.subarray(0, bytes.length >> 1));
      before(++count, name === 'writeFile' ? half : null);
      return real(...args);
    };
  }
  return { ...alone, files: files as unknown as OutputFiles };
}

/** A computer on which the process is killed at its n-th change of the disk. */
export const killedAt = (n: number): Environment =>
  guarded((number, write) => {
    if (number === n) write?.();
    if (number >= n) throw new Killed();
  });

/** A computer whose n-th change of the disk fails, and those after it where it lasts. */
export const failingAt = (n: number, code: string, lasting: boolean): Environment =>
  guarded((number, write) => {
    if (number !== n && !(lasting && number > n)) return;
    if (code === 'ENOSPC') write?.();
    throw Object.assign(new Error(code), { code });
  });

/** Counts the changes of the disk. */
export function counting(): { env: Environment; count: () => number } {
  let count = 0;
  return { env: guarded(() => void count++), count: () => count };
}

/** The documents that stand in a folder, by name. */
export function documentsIn(folder: string): Record<string, string> {
  const found: Record<string, string> = {};
  for (const entry of readdirSync(folder, { withFileTypes: true }))
    if (entry.isFile() && entry.name !== 'manifest.json' && !entry.name.startsWith('.'))
      found[entry.name] = readFileSync(join(folder, entry.name), 'utf8');
  return found;
}

/** The documents of a variant, by name, as they should stand. */
export const standing = (variant: Variant): Record<string, string> =>
  Object.fromEntries(documentsOf(variant).map(({ name, bytes }: OutputFile) => [name, String(bytes)]));

/** Names of ours that are not there to stay. */
export const leftovers = (folder: string): string[] =>
  readdirSync(folder).filter(name => name.startsWith('.labelwright'));
