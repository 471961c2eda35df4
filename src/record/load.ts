import { normalize } from 'node:path';
import { type Diagnostic, fail, hasErrors, type Outcome, succeed } from '../report/diagnostic.ts';
import { makerOf, productRecord } from './_assemble.ts';
import { includedFile } from './_inclusion.ts';
import { findingsOf } from './_issues.ts';
import { Materials } from './_materials.ts';
import { mended } from './_mended.ts';
import { ofKind, type RecordKind, readRecordFile } from './_read-file.ts';
import type { RecordEnv } from './files.ts';
import { type MakerInput, makerSchema } from './maker-schema.ts';
import { inOrder, type Path, type Places } from './places.ts';
import { keepsAll, plainValue } from './plain-value.ts';
import type { Maker, ProductRecord, RawMaterial } from './product-record.ts';
import { productSchema } from './product-schema.ts';
import { readSource } from './source.ts';
import { type Parsed, parseYaml } from './yaml.ts';

/** A record; where something is wrong in it, what is left without that, for stages that add their findings. */
export type LoadedRecord = Outcome<ProductRecord> & { readonly rest?: ProductRecord };

/**
 * Reads a product record with the maker and raw materials that it names. These lie in the folder tree of the record,
 * or in a folder that `env` allows.
 * @returns the record in fixed units with warnings, or every problem of the files in order of place.
 */
export const loadRecord = (path: string, env: RecordEnv): LoadedRecord =>
  product(readRecordFile(path, 'product', env), env);

/** Reads a raw-material record by itself, as `loadRecord` reads a product. */
export function loadRawMaterial(path: string, env: RecordEnv): Outcome<RawMaterial> {
  const findings: Diagnostic[] = [];
  const materials = new Materials(env, findings, normalize(path));
  const material = materials.read(path);
  return material === null || hasErrors(findings)
    ? fail(...inOrder(findings))
    : succeed(material, inOrder(findings));
}

/** What kind of record a file says that it holds; null where it says nothing of the kind or cannot be read. */
export function kindOfFile(path: string, env: RecordEnv): RecordKind | null {
  const source = readSource(path, env);
  const kind = source.ok
    ? /^\s*(?:\{\s*)?["']?labelwright["']?\s*:\s*["']?(product|raw-material|maker)\//m.exec(
        source.value.text,
      )?.[1]
    : undefined;
  return (kind as RecordKind | undefined) ?? null;
}

/** As `loadRecord`, from text that is already at hand; `file` is where relative paths start and what findings name. */
export function parseRecordText(text: string, file: string, env: RecordEnv): LoadedRecord {
  const parsed = parseYaml({ file, text: text.replace(/^\ufeff/, '') });
  return product(parsed.ok ? ofKind(parsed.value, 'product') : parsed, env);
}

/**
 * As `parseRecordText`, for text that is JSON: in most cases the faster reader of the machine is enough, and where it
 * would lose something, or something is wrong, the text is read again with places.
 */
export function parseRecordJson(text: string, file: string, env: RecordEnv): LoadedRecord {
  const bare = text.replace(/^\ufeff/, '');
  try {
    const value: unknown = JSON.parse(bare);
    if (keepsAll(bare, value)) {
      const read = parseRecordValue(value, env, file);
      if (read.ok || typeof value !== 'object' || value === null) return read;
    }
  } catch {
    // The reader below says what is wrong, and where.
  }
  return parseRecordText(bare, file, env);
}

/** As `loadRecord`, from a value parsed from JSON: findings carry a path, no line. */
export function parseRecordValue(value: unknown, env: RecordEnv, file = 'record'): LoadedRecord {
  const plain = plainValue(value, file);
  return product(plain.ok ? ofKind(plain.value, 'product') : plain, env);
}

function product(parsed: Outcome<Parsed>, env: RecordEnv): LoadedRecord {
  if (!parsed.ok) return fail(...inOrder(parsed.diagnostics));
  const { value, raw, places, warnings } = parsed.value;
  const findings: Diagnostic[] = [...parsed.diagnostics, ...warnings];
  const root = normalize(places.file);
  const materials = new Materials(env, findings, root);
  const checked = productSchema.safeParse(value);
  if (!checked.success) findings.push(...findingsOf(checked.error.issues, value, places));
  const { maker: named, formula } = value as { maker?: unknown; formula?: unknown };
  materials.follow(formula, places, ['formula']);
  const maker = typeof named === 'string' ? makerFile(named, places, env, root, findings) : null;
  findings.push(...leadingOut(value, places, env, root));
  const data = checked.success ? checked.data : mended(productSchema, value, checked.error.issues);
  // A line whose raw material could not be had is missing in the record.
  if (!data || materials.lost) return fail(...inOrder(findings));
  const written = typeof data.maker === 'object' ? makerOf(data.maker as MakerInput, places.file) : null;
  const record = productRecord(data, raw, maker ?? written, places, materials);
  if (materials.lost) return fail(...inOrder(findings));
  return hasErrors(findings)
    ? { ...fail(...inOrder(findings)), rest: record }
    : succeed(record, inOrder(findings));
}

/** Artwork and logo that a record names, where they lead out of its folder. */
function leadingOut(value: unknown, places: Places, env: RecordEnv, root: string): Diagnostic[] {
  const paths: readonly Path[] = [
    ['copy', 'artwork', 'file'],
    ['maker', 'brand', 'logo'],
    ['brand', 'logo'],
  ];
  return paths.flatMap(path => {
    let named = value;
    for (const key of path) named = (named as Record<string, unknown> | null | undefined)?.[key];
    if (typeof named !== 'string' || named.trim() === '') return [];
    const found = includedFile(named, places, path, env, root);
    return typeof found === 'string' ? [] : [found];
  });
}

function makerFile(
  named: string,
  places: Places,
  env: RecordEnv,
  root: string,
  findings: Diagnostic[],
): Maker | null {
  if (named.trim() === '') return null;
  const at = places.at(['maker']);
  const file = includedFile(named, places, ['maker'], env, root);
  if (typeof file !== 'string') {
    findings.push(file);
    return null;
  }
  const parsed = readRecordFile(file, 'maker', env, at);
  findings.push(
    ...parsed.diagnostics.map(found => (found.at === at ? { ...found, excerpt: places.excerpt(at) } : found)),
  );
  if (!parsed.ok) return null;
  findings.push(...parsed.value.warnings);
  findings.push(...leadingOut(parsed.value.value, parsed.value.places, env, root));
  const checked = makerSchema.safeParse(parsed.value.value);
  if (checked.success) return makerOf(checked.data, file);
  findings.push(...findingsOf(checked.error.issues, parsed.value.value, parsed.value.places));
  return null;
}
