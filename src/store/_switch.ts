import { join } from 'node:path';
import type { Environment, OutputFiles } from '../environment/environment.ts';
import { sha256 } from '../provenance/inputs.ts';
import { hashAt, TEMPORARY } from './_folder.ts';
import { MANIFEST, type Manifest, manifestBytes, type Underway } from './manifest.ts';

/** A file as it is built. */
export interface Built {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Builds files in a folder of their own beside their places, and flushes them to the disk. */
export function build({ files, randomName }: Environment, folder: string, built: readonly Built[]): string {
  const from = `${TEMPORARY}${randomName()}`;
  files.makeFolder(join(folder, from));
  for (const { name, bytes } of built) files.writeFile(join(folder, from, name), bytes);
  files.flushFolder(join(folder, from));
  return from;
}

/** Puts a manifest in its place in one step. */
export function putManifest({ files, randomName }: Environment, folder: string, manifest: Manifest): void {
  const temporary = join(folder, `${TEMPORARY}${randomName()}`);
  files.writeFile(temporary, manifestBytes(manifest));
  files.rename(temporary, join(folder, MANIFEST));
  files.flushFolder(folder);
}

/**
 * Switches built files in. From the moment that the manifest says what is on its way the switch is decided: a run
 * that is killed is carried to its end by the next one. What was there before is whole up to that moment.
 */
export function switchIn(env: Environment, folder: string, manifest: Manifest, underway: Underway): void {
  putManifest(env, folder, { ...manifest, state: 'switching', switch: underway });
  carryOut(env, folder, manifest, underway);
}

/** Carries a switch to its end that an earlier run began; gives the manifest as it then stands. */
export function resume(env: Environment, folder: string, manifest: Manifest): Manifest {
  if (manifest.state !== 'switching' || !manifest.switch) return manifest;
  const { switch: underway, ...rest } = manifest;
  const ended: Manifest = { ...rest, state: rest.reason === null ? 'current' : 'out-of-date' };
  carryOut(env, folder, ended, underway);
  return ended;
}

function carryOut(env: Environment, folder: string, manifest: Manifest, underway: Underway): void {
  const { files } = env;
  const at = (name: string) => join(folder, name);
  for (const { name, to } of underway.aside) moveAside(files, folder, underway, name, to);
  for (const { name, sha256: before } of underway.before) {
    const built = files.read(join(folder, underway.from, name));
    if (!built) continue;
    const now = hashAt(files, folder, name);
    // Where a person changed it while the switch stood still, it stays, and shows as changed.
    if (now === null || now === before || now === sha256(built))
      files.rename(join(folder, underway.from, name), at(name));
  }
  for (const { name, sha256: ours } of underway.gone)
    if (hashAt(files, folder, name) === ours) files.remove(at(name));
  files.flushFolder(folder);
  putManifest(env, folder, manifest);
  files.remove(at(underway.from));
}

/** A changed file gets its new name once: not when what was built already stands in its place. */
function moveAside(files: OutputFiles, folder: string, underway: Underway, name: string, to: string): void {
  const replaced = underway.before.some(each => each.name === name);
  if (replaced && files.kind(join(folder, underway.from, name)) === null) return;
  if (files.kind(join(folder, name)) !== null && files.kind(join(folder, to)) === null)
    files.rename(join(folder, name), join(folder, to));
}
