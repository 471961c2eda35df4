import * as z from 'zod/mini';

/** Name of the manifest in an output folder. */
export const MANIFEST = 'manifest.json';

const hash = z.string().check(z.regex(/^[0-9a-f]{64}$/));
const text = z.string();
/** A name in the folder itself: nothing that leads elsewhere. */
const name = z.string().check(z.regex(/^(?!\.\.?$)[^/\\\0]+$/));
const inputFile = z.strictObject({ path: text, sha256: hash });

const file = z.strictObject({
  name,
  kind: z.enum(['distribution', 'review']),
  sha256: hash,
  bytes: z.number(),
  /** Fingerprint of the inputs from which this file was made. */
  fingerprint: hash,
  asOf: text,
});

/** What is on its way while a packet is switched in; without it, nothing is. */
const underway = z.strictObject({
  /** Folder in which the new files were built. */
  from: name,
  /** What stood at the place of each new file: its hash, or null for nothing. */
  before: z.array(z.strictObject({ name, sha256: z.nullable(hash) })),
  /** Files of ours that go. */
  gone: z.array(z.strictObject({ name, sha256: hash })),
  /** Files that a person changed, and the names that they get. */
  aside: z.array(z.strictObject({ name, to: name })),
});

const schema = z.strictObject({
  schema: z.literal('labelwright/manifest/1'),
  product: z.strictObject({ name: text, code: text }),
  /** `out-of-date`: the last run made nothing new, for the reason given. */
  state: z.enum(['current', 'out-of-date', 'switching']),
  reason: z.nullable(text),
  asOf: text,
  fingerprint: hash,
  inputs: z.strictObject({
    /** Path as seen from this folder. */
    record: inputFile,
    /** Paths as seen from the record. */
    included: z.array(inputFile),
    law: z.strictObject({ since: text, sha256: hash }),
    program: z.strictObject({ version: text, templates: hash }),
  }),
  files: z.array(file),
  /** Files that the packet should hold and could not be made. */
  missing: z.array(z.strictObject({ name, reason: text })),
  /** Files that a person changed, moved aside by an earlier run. */
  aside: z.array(name),
  switch: z.optional(underway),
});

/** What an output folder holds, and from what it was made. */
export type Manifest = z.infer<typeof schema>;
export type ManifestFile = z.infer<typeof file>;
export type Underway = z.infer<typeof underway>;

/** Reads a manifest; null where the bytes are none. */
export function parseManifest(bytes: Uint8Array): Manifest | null {
  try {
    const parsed = schema.safeParse(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)));
    return parsed.success ? parsed.data : null;
  } catch {
    return null;
  }
}

export const manifestBytes = (manifest: Manifest): Uint8Array =>
  new TextEncoder().encode(`${JSON.stringify(manifest, null, 2)}\n`);
