import { join } from 'node:path';
import type { Environment, Held, OutputFiles } from '../environment/environment.ts';
import { LOCK, readManifest, removeEmptyFolders, TEMPORARY } from './_folder.ts';
import { resume } from './_switch.ts';
import type { Manifest } from './manifest.ts';
import { OutputError } from './output-error.ts';

/**
 * Does something in a folder while no other run writes there. What a killed run left is carried to its end or
 * removed first.
 * @param action gets the manifest as it then stands.
 * @throws OutputError where the folder cannot be written
 */
export async function locked<T>(
  env: Environment,
  folder: string,
  action: (manifest: Manifest | 'unreadable' | null, held: Held) => T,
): Promise<T> {
  const { files } = env;
  let made: string | null = null;
  try {
    made = files.makeFolder(folder);
    const held = await env.lock(join(folder, LOCK));
    try {
      const found = readManifest(files, folder);
      const manifest = found && found !== 'unreadable' ? resume(env, folder, found) : found;
      clear(files, folder);
      try {
        return action(manifest, held);
      } catch (error) {
        // Without the lock, what lies there may be another's.
        if ((error as NodeJS.ErrnoException).code !== 'ELOCKED') undo(() => clear(files, folder));
        throw error;
      }
    } finally {
      await held.release();
    }
  } catch (error) {
    if (error instanceof OutputError || typeof (error as NodeJS.ErrnoException).code !== 'string')
      throw error;
    throw new OutputError(folder, error);
  } finally {
    undo(() => removeEmptyFolders(files, folder, made));
  }
}

/** Removes what a run built and did not switch in; what a switch that is decided still needs stays. */
function clear(files: OutputFiles, folder: string): void {
  const manifest = readManifest(files, folder);
  const needed = manifest && manifest !== 'unreadable' ? manifest.switch?.from : undefined;
  for (const name of files.list(folder))
    if (name.startsWith(TEMPORARY) && name !== needed) files.remove(join(folder, name));
}

/** Tidying up after a failure must not hide it. */
function undo(action: () => void): void {
  try {
    action();
  } catch {
    // The next run tidies again.
  }
}
