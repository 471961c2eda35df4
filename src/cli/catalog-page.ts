import { join } from 'node:path';
import { fillPage } from '../document/template.ts';
import { nodeEnvironment } from '../environment/node.ts';
import { readTemplate } from '../environment/package-files.ts';
import { sha256 } from '../provenance/inputs.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { MANIFEST, type Manifest, parseManifest } from '../store/manifest.ts';
import { sheetFileName } from '../words/en/catalog.ts';
import { writeFiles } from './write-files.ts';

/** Name of the page in the folder of all packets. */
export const CATALOG = 'catalog.html';

/** What a data sheet says of its own standing. */
export interface SheetStanding {
  readonly revision: string | null;
  /** YYYY-MM-DD; of the last change of the record, where the record says it. */
  readonly date: string;
}

/** Reads revision and date from the data sheets of a folder; null where there is none that can be read. */
export function standingOf(folder: string, names: readonly string[]): SheetStanding | null {
  for (const name of names) {
    if (sheetOf(name)?.ending !== 'json') continue;
    const bytes = nodeEnvironment.files.read(join(folder, name));
    try {
      const { revision, date } = JSON.parse(new TextDecoder().decode(bytes ?? new Uint8Array()));
      if (typeof date === 'string') return { revision: typeof revision === 'string' ? revision : null, date };
    } catch {
      // A file that a person changed or took away says nothing.
    }
  }
  return null;
}

/** The market and the ending of the file of a data sheet; null for other documents. */
function sheetOf(name: string): { readonly market: string | null; readonly ending: string } | null {
  const [, market, ending] = /^sds(?:-([a-z]+))?\.(pdf|html|json)$/.exec(name) ?? [];
  return ending === undefined ? null : { market: market ?? null, ending };
}

/** The name under which a data sheet is saved: product and revision; null for other documents. */
export function savedAs(name: string, product: string, standing: SheetStanding | null): string | null {
  const sheet = sheetOf(name);
  if (!sheet || !standing) return null;
  const told = sheetFileName(product, sheet.market, standing);
  // Signs that a file system does not take.
  return `${told.replace(/[\\/:*?"<>|\p{Cc}]+/gu, '-').replace(/^\.+/, '')}.${sheet.ending}`;
}

export interface CatalogRow {
  readonly record: string;
  /** Null where the record cannot be used. */
  readonly product: { readonly name: string; readonly code: string; readonly folder: string } | null;
  /** Revision and date of the data sheets that stand there, as they say it themselves; null where none does. */
  readonly sheet: SheetStanding | null;
  readonly state: 'made' | 'unchanged' | 'incomplete' | 'refused';
  /** Documents that may leave the shop, with what could not be made. */
  readonly files: readonly string[];
  readonly missing: readonly { readonly name: string; readonly reason: string }[];
  /** The date for which they were made; null where nothing stands there. */
  readonly madeFor: string | null;
}

/** What the manifest of a folder says of its documents; null where there is none. */
export function manifestOf(folder: string): Manifest | null {
  const bytes = nodeEnvironment.files.read(join(folder, MANIFEST));
  return bytes && parseManifest(bytes);
}

const seal = /<meta name="labelwright:seal" content="([0-9a-f]{64}|)">/;
const unsealed = (page: string): string => page.replace(seal, '<meta name="labelwright:seal" content="">');

/**
 * Writes the page of all current documents. A page that a person changed stays, or is moved aside.
 * @returns the path, or the finding that it was changed.
 */
export async function writeCatalog(
  folder: string,
  rows: readonly CatalogRow[],
  { date, replace }: { readonly date: string; readonly replace: boolean },
): Promise<{ readonly path: string } | Diagnostic> {
  const { files } = nodeEnvironment;
  const path = join(folder, CATALOG);
  const before = files.read(path);
  if (before && !isOurs(new TextDecoder().decode(before))) {
    if (!replace)
      return {
        code: 'file-changed',
        severity: 'error',
        message: 'the page of all documents was changed by hand, or is not one that a run made',
        hint: '`--replace` moves it aside',
        at: { file: path },
      };
    files.rename(path, join(folder, `catalog.kept-${date}-${sha256(before).slice(0, 8)}.html`));
  }
  const page = await fillPage(readTemplate, 'packet/catalog.hbs', {
    date,
    products: rows.flatMap(({ product, state, missing, madeFor, sheet, files: names }) =>
      product
        ? [
            {
              name: product.name,
              code: product.code,
              madeFor,
              sheet,
              refused: state === 'refused',
              missing,
              files: names.map(name => ({
                name,
                saved: savedAs(name, product.name, sheet),
                path: [product.folder, name].map(encodeURIComponent).join('/'),
              })),
            },
          ]
        : [],
    ),
    unread: rows.flatMap(({ product, record }) => (product ? [] : [record])),
  });
  writeFiles(folder, [{ name: CATALOG, bytes: page.replace(seal, sealed(page)) }]);
  return { path };
}

const sealed = (page: string): string => `<meta name="labelwright:seal" content="${sha256(unsealed(page))}">`;

const isOurs = (page: string): boolean => seal.exec(page)?.[1] === sha256(unsealed(page));
