import { join } from 'node:path';
import type { Environment } from '../environment/environment.ts';
import { readManifest, recordOf } from './_folder.ts';
import { locked } from './_locked.ts';
import { putManifest } from './_switch.ts';

/**
 * Marks the packet that a refused run leaves behind as out of date. Nothing happens where the folder holds no packet
 * of the record.
 * @param now fingerprint of the inputs of that run, where it got so far: a packet of the same inputs is not out of date.
 * @returns whether there was a packet to mark.
 * @throws OutputError where the folder cannot be written
 */
export async function markOutOfDate(
  folder: string,
  record: string,
  reason: string,
  env: Environment,
  now: string | null = null,
): Promise<boolean> {
  if (!isPacketOf(folder, record, env)) return false;
  return locked(env, folder, manifest => {
    if (!manifest || manifest === 'unreadable' || manifest.fingerprint === now) return false;
    putManifest(env, folder, { ...manifest, state: 'out-of-date', reason });
    return true;
  });
}

/** Whether a folder holds a packet made from a record. */
export function isPacketOf(folder: string, record: string, { files }: Environment): boolean {
  const manifest = readManifest(files, folder);
  if (!manifest || manifest === 'unreadable') return false;
  return recordOf(files, folder, manifest) === files.realPath(record);
}

/** The folders directly below another that hold a packet made from a record. */
export const packetsBelow = (folder: string, record: string, env: Environment): string[] =>
  env.files
    .list(folder)
    .map(name => join(folder, name))
    .filter(path => isPacketOf(path, record, env));
