import { join } from 'node:path';
import type { Environment } from '../environment/environment.ts';
import { fingerprintOf, sha256 } from '../provenance/inputs.ts';
import { hashAt, recordSeenFrom } from './_folder.ts';
import type { Delivery, OutputFile } from './delivery.ts';
import type { OutputFact } from './facts.ts';
import { MANIFEST, type Manifest, type ManifestFile } from './manifest.ts';

const bytesOf = ({ bytes }: OutputFile): Uint8Array =>
  typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes;

/** Compares what is to stand in the folder with what does. */
export function planOf(delivery: Delivery, old: Manifest | null, unreadable: boolean, env: Environment) {
  const { folder, inputs, asOf, missing } = delivery;
  const { files } = env;
  const fingerprint = fingerprintOf(inputs);
  const known = new Map((old?.files ?? []).map(file => [file.name, file]));
  const fresh = delivery.files.map(file => {
    const bytes = bytesOf(file);
    const entry: ManifestFile = {
      name: file.name,
      kind: file.kind,
      sha256: sha256(bytes),
      bytes: bytes.length,
      fingerprint,
      asOf,
    };
    return { entry, bytes };
  });
  const names = new Set(delivery.files.map(({ name }) => name));
  const dropped = new Set(missing.map(({ name }) => name));
  const goes = (file: ManifestFile) =>
    dropped.has(file.name) || (delivery.whole && file.fingerprint !== fingerprint);
  const others = [...known.values()].filter(({ name }) => !names.has(name));
  const leaving = others.filter(goes);

  const changed: { id: 'file-changed' | 'file-in-the-way'; name: string }[] = [];
  if (unreadable) changed.push({ id: 'file-changed', name: MANIFEST });
  const before = fresh.map(({ entry: { name, sha256: next } }) => {
    const now = hashAt(files, folder, name);
    const ours = known.get(name)?.sha256;
    if (now === null || now === ours || now === next) return { name, sha256: now };
    changed.push({ id: ours === undefined ? 'file-in-the-way' : 'file-changed', name });
    return { name, sha256: null };
  });
  const gone: { name: string; sha256: string }[] = [];
  for (const { name, sha256: ours } of leaving) {
    const now = hashAt(files, folder, name);
    if (now === ours) gone.push({ name, sha256: ours });
    else if (now !== null) changed.push({ id: 'file-changed', name });
  }
  const aside = changed.map(({ name }) => ({ name, to: freeName(name, folder, env) }));
  const staying = others.filter(file => !goes(file));
  const older = staying.filter(file => file.fingerprint !== fingerprint);
  const manifest: Manifest = {
    schema: 'labelwright/manifest/1',
    product: { name: delivery.product.name, code: delivery.product.code },
    state: older.length === 0 ? 'current' : 'out-of-date',
    reason: older.length === 0 ? null : `made from other inputs: ${older.map(({ name }) => name).join(', ')}`,
    asOf,
    fingerprint,
    inputs: {
      record: {
        path: recordSeenFrom(files, folder, inputs.record.path),
        sha256: inputs.record.sha256,
      },
      included: inputs.included.map(({ path, sha256: hash }) => ({ path, sha256: hash })),
      law: { ...inputs.law },
      program: { ...inputs.program },
    },
    files: [...staying, ...fresh.map(({ entry }) => entry)].sort((a, b) => (a.name < b.name ? -1 : 1)),
    missing: [
      ...(delivery.whole ? [] : (old?.missing ?? [])).filter(
        ({ name }) => !names.has(name) && !dropped.has(name),
      ),
      ...missing,
    ],
    aside: [
      ...(old?.aside ?? []).filter(name => files.kind(join(folder, name)) !== null),
      ...aside.map(({ to }) => to),
    ],
  };
  const told: OutputFact[] = [
    ...aside.map(({ name, to }) => ({ id: 'moved-aside' as const, name, to })),
    ...gone.map(({ name }) => ({ id: 'removed' as const, name })),
  ];
  const built = fresh.map(({ entry: { name }, bytes }) => ({ name, bytes }));
  const moving = aside.filter(({ name }) => name !== MANIFEST);
  return { changed, manifest, built, aside, steps: { before, gone, aside: moving }, told };
}

/** `sds.2026-11-26.html`, with a number where that is taken. */
function freeName(name: string, folder: string, { files, now }: Environment): string {
  const dot = name.lastIndexOf('.');
  const [stem, end] = dot > 0 ? [name.slice(0, dot), name.slice(dot)] : [name, ''];
  const dated = `${stem}.${now().toISOString().slice(0, 10)}`;
  for (let number = 1; ; number++) {
    const free = `${dated}${number === 1 ? '' : `-${number}`}${end}`;
    if (files.kind(join(folder, free)) === null) return free;
  }
}
