import { join } from 'node:path';
import type { Environment } from '../environment/environment.ts';
import { reading, readManifest, recordOf } from './_folder.ts';
import { locked } from './_locked.ts';
import { putManifest } from './_switch.ts';
import { OutputError } from './output-error.ts';

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

/** Whether a folder holds a packet made from a record. One that cannot be read is no packet of ours to mark. */
function isPacketOf(folder: string, record: string, { files }: Environment): boolean {
  try {
    const manifest = reading(folder, () => readManifest(files, folder));
    if (!manifest || manifest === 'unreadable') return false;
    return recordOf(files, folder, manifest) === files.realPath(record);
  } catch (error) {
    if (!(error instanceof OutputError)) throw error;
    return false;
  }
}

/** The folders directly below another that hold a packet made from a record. */
export const packetsBelow = (folder: string, record: string, env: Environment): string[] =>
  reading(folder, () => env.files.list(folder))
    .map(name => join(folder, name))
    .filter(path => isPacketOf(path, record, env));
