import { join } from 'node:path';
import { inputsOf } from '../../draft/inputs-of.ts';
import { openProduct, type Product } from '../../draft/open-product.ts';
import { openReference } from '../../draft/open-reference.ts';
import { nodeEnvironment } from '../../environment/node.ts';
import { readShelf } from '../../record/shelf.ts';
import { usual } from '../../reference/basis.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import { renderJson } from '../../report/render.ts';
import { examine } from '../../store/examine.ts';
import { parseArguments, UsageError } from '../arguments.ts';
import { type CatalogRow, manifestOf, standingOf, writeCatalog } from '../catalog-page.ts';
import type { Command } from '../command.ts';
import { leaveBehind } from '../deliver.ts';
import { exit, type Io } from '../io.ts';
import { onePacket } from '../one-packet.ts';
import { allow, asOf, json, replace } from '../options.ts';
import { report } from '../report.ts';

/** The command as data. */
export const command: Command = {
  name: 'catalog',
  does: 'makes the packets of all products of a folder, only what changed, and a page of their documents',
  place: 110,
  about: [
    'A packet is made again where its record, a file that the record names, the law or the program changed, or where its files do not belong together.',
    'The page lists the data sheets and labels of all products, for answering requests, with revision and date; a sheet is saved under the name of product and revision.',
  ],
  argument: { name: 'DIR', does: 'folder with the product records', count: 'one', completes: 'folder' },
  options: {
    replace,
    out: {
      kind: 'text',
      value: 'DIR',
      does: 'folder for the packets, each in a folder of its code; out where it is left out',
      completes: 'folder',
    },
    json,
    'as-of': asOf,
    allow,
  },
  examples: [{ call: 'catalog products', does: 'all packets of a folder, and out/catalog.html' }],
  run,
};

/** Makes the packets of a folder that are not current, and the page of all. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, command);
  const [folder, out] = [parsed.positional[0]!, parsed.text('out') ?? 'out'];
  const [date, replace] = [parsed.text('as-of') ?? io.today, parsed.flag('replace')];
  if (nodeEnvironment.files.kind(folder) !== 'folder')
    throw new UsageError(`there is no folder \`${folder}\`; name the one with the product records`);
  const reference = await openReference(usual, date);
  const shelf = readShelf(folder, io.files);
  const wrong = [...reference.diagnostics, ...(shelf.ok ? shelf.value.conflicts : shelf.diagnostics)];
  if (!reference.ok || !shelf.ok || wrong.length > 0) {
    report(wrong, io);
    return exit.badInput;
  }
  const rows: CatalogRow[] = [];
  const findings: Diagnostic[] = [];
  let status: number = exit.done;
  for (const path of shelf.value.productFiles) {
    const { row, worst, found } = await rowOf(path, { out, date, replace }, io);
    rows.push(row);
    findings.push(...found);
    status = Math.max(status, worst);
  }
  const page = await writeCatalog(out, rows, { date, replace });
  if (!('path' in page)) {
    report([page], io);
    status = Math.max(status, exit.notMet);
    findings.push(page);
  }
  const file = 'path' in page ? page.path : null;
  if (parsed.flag('json')) {
    const document = { schema: 'labelwright/catalog/1', asOf: date, page: file, products: rows };
    io.out(`${JSON.stringify({ ...document, findings: renderJson(findings) }, null, 2)}\n`);
  } else io.out([...rows.map(lineOf), ...(file ? [file] : []), ''].join('\n'));
  return status;
}

interface Call {
  readonly out: string;
  readonly date: string;
  readonly replace: boolean;
}

async function rowOf(
  path: string,
  { out, date, replace }: Call,
  io: Io,
): Promise<{ readonly row: CatalogRow; readonly worst: number; readonly found: readonly Diagnostic[] }> {
  const opened = openProduct(path, io.files);
  if (!opened.ok) {
    report([...opened.diagnostics, ...(await leaveBehind(path, null, 'the record cannot be used'))], io);
    const row = {
      record: path,
      product: null,
      sheet: null,
      state: 'refused',
      files: [],
      missing: [],
      madeFor: null,
    } as const;
    return { row, worst: exit.badInput, found: opened.diagnostics };
  }
  const { name, code } = opened.value.record;
  const folder = join(out, code);
  const current = isCurrent(opened.value, folder, date);
  const { status, findings } = current
    ? { status: exit.done, findings: [] }
    : await onePacket(path, { date, out: folder, replace }, io);
  const manifest = manifestOf(folder);
  const missing = manifest?.missing ?? [];
  const files = (manifest?.files ?? []).flatMap(file => (file.kind === 'distribution' ? [file.name] : []));
  const row: CatalogRow = {
    record: path,
    product: { name, code, folder: code },
    state: stateOf(current, status, missing.length),
    sheet: standingOf(folder, files),
    files,
    missing,
    madeFor: manifest?.asOf ?? null,
  };
  return { row, worst: missing.length > 0 ? Math.max(status, exit.notMet) : status, found: findings };
}

function stateOf(current: boolean, status: number, missing: number): CatalogRow['state'] {
  if (status !== exit.done && missing === 0) return 'refused';
  if (missing > 0) return 'incomplete';
  return current ? 'unchanged' : 'made';
}

/** Whether a packet stands there that was made from the same inputs, under the law of the date, and is whole. */
function isCurrent(product: Product, folder: string, date: string): boolean {
  const against = examine(nodeEnvironment.files, folder, inputsOf(product, date), product.record);
  return against.every(({ id }) => id === 'not-made');
}

const lineOf = ({ record, product, state, madeFor, missing }: CatalogRow): string => {
  if (!product) return `${record}: cannot be used`;
  const lost = missing.map(({ name }) => name).join(', ');
  return `${product.code}: ${state}${madeFor ? `, for ${madeFor}` : ''}${lost ? `; missing: ${lost}` : ''}  (${product.name})`;
};
