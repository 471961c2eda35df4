import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { CopyKind, CopyMark } from '../provenance/copy-mark.ts';
import { fingerprintOf, type Inputs, type Sources, sha256 } from '../provenance/inputs.ts';
import { packagePath, readPackageFile } from '../reference/package-files.ts';
import { VERSION } from '../version.ts';
import type { Product } from './open-product.ts';
import type { Reference } from './open-reference.ts';

/**
 * All from which the documents of a product are made, with their hashes.
 * @param asOf YYYY-MM-DD
 */
export function inputsOf({ sources }: { readonly sources: Sources }, asOf: string): Inputs {
  const law = lawData();
  return {
    ...sources,
    law: { since: law.dates.findLast(date => date <= asOf) ?? '', sha256: law.sha256 },
    program: { version: VERSION, templates: templatesHash() },
  };
}

/** The mark of a document of a product. */
export const copyMark = (
  product: Pick<Product, 'sources'> & { readonly reference: Reference },
  kind: CopyKind,
): CopyMark => ({ kind, fingerprint: fingerprintOf(inputsOf(product, product.reference.basis.asOf)) });

// The files of the package do not change while a program runs.
let law: { readonly sha256: string; readonly dates: readonly string[] } | null = null;
let templates: string | null = null;

/** Hash of the law data, and every date in them: between two of them no figure, entry or statement changes. */
function lawData() {
  if (law) return law;
  const files = filesOf('hazard-data', /\.(json|tsv|ya?ml)$/);
  const dates = files.flatMap(path => read(path).match(/\b(?:19|20)\d\d-\d\d-\d\d\b/g) ?? []);
  law = { sha256: hashOf(files), dates: [...new Set(dates)].sort() };
  return law;
}

function templatesHash(): string {
  const shaping = (path: string) => !/^templates\/(demo|starter)\//.test(path);
  templates ??= hashOf(filesOf('templates', /\.(hbs|json|ya?ml)$/).filter(shaping));
  return templates;
}

/** Files of a folder of the package, by path from its root, sorted. */
const filesOf = (folder: string, wanted: RegExp): string[] =>
  readdirSync(packagePath(folder), { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile() && wanted.test(entry.name))
    .map(({ parentPath, name }) => join(parentPath, name).slice(packagePath().length + 1))
    .map(path => path.replaceAll('\\', '/'))
    .sort();

const read = (path: string): string => readPackageFile(path).toString('latin1');

const hashOf = (files: readonly string[]): string =>
  sha256(files.map(path => `${path} ${sha256(readPackageFile(path))}`).join('\n'));
