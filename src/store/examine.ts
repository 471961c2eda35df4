import { join } from 'node:path';
import type { OutputFiles } from '../environment/environment.ts';
import { fingerprintOf, type Inputs } from '../provenance/inputs.ts';
import { hashAt, isOfRecord, otherRecord, reading, readManifest, TEMPORARY } from './_folder.ts';
import type { OutputFact } from './facts.ts';
import { MANIFEST, type Manifest } from './manifest.ts';

/**
 * Reads an output folder: do its files belong together, and to the record as it is now? Writes nothing.
 * @param now inputs of the record as they are now, under the law of the date of `madeFor`.
 * @returns what stands against it; empty where all belongs together.
 * @throws OutputError where the folder cannot be read
 */
export function examine(
  files: OutputFiles,
  folder: string,
  now: Inputs,
  { file, code }: { readonly file: string; readonly code: string },
): OutputFact[] {
  return reading(folder, () => against(files, folder, now, { file, code }));
}

function against(
  files: OutputFiles,
  folder: string,
  now: Inputs,
  { file, code }: { readonly file: string; readonly code: string },
): OutputFact[] {
  const manifest = readManifest(files, folder);
  if (manifest === null) return [{ id: 'no-manifest' }];
  if (manifest === 'unreadable') return [{ id: 'manifest-unreadable' }];
  if (!isOfRecord(files, folder, manifest, file, code)) return [otherRecord(folder, manifest)];
  return [
    ...together(files, folder, manifest),
    ...(manifest.state === 'out-of-date'
      ? [{ id: 'out-of-date' as const, reason: manifest.reason ?? '' }]
      : []),
    ...manifest.missing.map(({ name, reason }) => ({ id: 'not-made' as const, name, reason })),
    ...sinceMade(manifest, now),
  ];
}

/** The date (YYYY-MM-DD) for which the files of a folder were made; null where there is no manifest. */
export function madeFor(files: OutputFiles, folder: string): string | null {
  const manifest = reading(folder, () => readManifest(files, folder));
  return manifest && manifest !== 'unreadable' ? manifest.asOf : null;
}

function together(files: OutputFiles, folder: string, manifest: Manifest): OutputFact[] {
  if (manifest.state === 'switching') return [{ id: 'interrupted' }];
  const named = new Set([MANIFEST, ...manifest.aside, ...manifest.files.map(({ name }) => name)]);
  return [
    ...manifest.files.flatMap(({ name, sha256, fingerprint }): OutputFact[] => {
      if (files.kind(join(folder, name)) === null) return [{ id: 'file-missing', name }];
      if (hashAt(files, folder, name) !== sha256) return [{ id: 'file-changed', name }];
      return fingerprint === manifest.fingerprint ? [] : [{ id: 'mixture', name }];
    }),
    ...files
      .list(folder)
      .filter(name => !named.has(name) && !name.startsWith(TEMPORARY))
      .filter(name => isOfOtherInputs(files, join(folder, name), manifest.fingerprint))
      .map(name => ({ id: 'stray' as const, name })),
  ];
}

/** How the mark stands in XMP, in HTML, in JSON and in Markdown and SVG. */
const mark = /(?:fingerprint>|fingerprint" content="|"fingerprint": "|fingerprint: )([0-9a-f]{64})/;

const documents = /\.(pdf|html|json|md|svg)$/;

/** Whether a file is a document of ours that was made from other inputs. */
function isOfOtherInputs(files: OutputFiles, path: string, fingerprint: string): boolean {
  if (!documents.test(path) || files.kind(path) !== 'file') return false;
  const found = mark.exec(new TextDecoder('latin1').decode(files.read(path) ?? new Uint8Array()));
  return found !== null && found[1] !== fingerprint;
}

/** Which inputs are others than those of the packet. */
function sinceMade({ inputs: made, fingerprint }: Manifest, now: Inputs): OutputFact[] {
  if (fingerprintOf(now) === fingerprint) return [];
  const [before, after] = [made.included, now.included].map(
    included => new Map(included.map(({ path, sha256 }) => [path, sha256])),
  ) as [Map<string, string>, Map<string, string>];
  return [
    ...(made.record.sha256 === now.record.sha256 ? [] : [{ id: 'record-changed' as const }]),
    ...[...after].flatMap(([path, hash]): OutputFact[] => {
      const known = before.get(path);
      if (known === undefined) return [{ id: 'include-new', path }];
      return known === hash ? [] : [{ id: 'include-changed', path }];
    }),
    ...[...before.keys()]
      .filter(path => !after.has(path))
      .map(path => ({ id: 'include-gone' as const, path })),
    ...(made.law.since === now.law.since && made.law.sha256 === now.law.sha256
      ? []
      : [{ id: 'law-changed' as const }]),
    ...(made.program.version === now.program.version && made.program.templates === now.program.templates
      ? []
      : [{ id: 'program-changed' as const, made: made.program.version, now: now.program.version }]),
  ];
}
