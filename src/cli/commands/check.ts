import { statSync } from 'node:fs';
import { checkGlyphs, hasRareCharacters } from '../../draft/check-glyphs.ts';
import { checkedProduct } from '../../draft/checked-product.ts';
import { openProduct } from '../../draft/open-product.ts';
import { openReference, type Reference } from '../../draft/open-reference.ts';
import type { RecordEnv } from '../../record/files.ts';
import { readShelf, type Shelf, usersOf } from '../../record/shelf.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import { hasErrors } from '../../report/diagnostic.ts';
import { renderJson, renderText } from '../../report/render.ts';
import { type CommandUsage, parseArguments, UsageError } from '../arguments.ts';
import { checkJson } from '../check-json.ts';
import { shelfJson, shelfText } from '../check-shelf.ts';
import { checkText } from '../check-text.ts';
import { nodeFiles } from '../files.ts';
import { inputStatus } from '../input-status.ts';
import { exit, type Io } from '../io.ts';

const usage: CommandUsage = {
  usage: 'check RECORD… [--uses RAW-MATERIAL] [--json] [--as-of YYYY-MM-DD]',
  options: { uses: 'text', json: 'flag', 'as-of': 'date' },
  positional: [1, Number.POSITIVE_INFINITY],
};

/** What one call has found so far. */
interface Found {
  status: number;
  readonly products: unknown[];
  readonly materials: unknown[];
  readonly findings: Diagnostic[];
}

/** Reads, validates and expands records, or all records of a folder; writes nothing. Returns the exit status. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  const parsed = parseArguments(args, usage);
  const asOf = parsed.text('as-of') ?? io.today;
  const [files, json, uses] = [io.files ?? nodeFiles, parsed.flag('json'), parsed.text('uses')];
  const reference = await openReference('us-hcs', asOf);
  if (!reference.ok) {
    io.err(renderText(reference.diagnostics));
    return exit.badInput;
  }
  const found: Found = { status: exit.done, products: [], materials: [], findings: [] };
  const tell = (diagnostics: readonly Diagnostic[]): void => {
    found.findings.push(...diagnostics);
    if (diagnostics.length > 0) io.err(renderText(diagnostics));
    if (hasErrors(diagnostics)) found.status = worse(found.status, inputStatus(diagnostics));
  };
  const one = async (path: string, env: RecordEnv): Promise<void> => {
    const opened = openProduct(path, env);
    tell(opened.diagnostics);
    if (!opened.ok) return;
    const checked = checkedProduct(opened.value, reference.value as Reference, asOf);
    const notes = checked.doubts.filter(({ severity }) => severity === 'note');
    tell(checked.doubts.filter(doubt => !notes.includes(doubt)));
    found.findings.push(...notes);
    if (hasRareCharacters(opened.value.record)) {
      const { loadFonts } = await import('../../text/font-library.ts');
      tell(checkGlyphs(opened.value.record, await loadFonts()));
    }
    found.products.push(checkJson(checked));
    if (!json) io.out(checkText(checked, notes));
  };
  for (const path of parsed.positional) {
    if (!statSync(path, { throwIfNoEntry: false })?.isDirectory()) {
      if (uses !== null) throw new UsageError('--uses looks through a folder; name one');
      await one(path, files);
      continue;
    }
    const shelf = readShelf(path, files);
    if (!shelf.ok) {
      tell(shelf.diagnostics);
      continue;
    }
    if (uses !== null) {
      usersIn(shelf.value, uses, json, found, io);
      continue;
    }
    for (const product of shelf.value.productFiles)
      await one(product, { ...files, allow: [...(files.allow ?? []), path] });
    const said = new Set(found.findings.map(key));
    tell([...shelf.value.findings, ...shelf.value.conflicts].filter(finding => !said.has(key(finding))));
    found.materials.push(...shelfJson(shelf.value, io.today));
    if (!json) io.out(shelfText(shelf.value, io.today));
  }
  if (json) io.out(`${JSON.stringify(asJson(found), null, 2)}\n`);
  return found.status;
}

const key = ({ at, code, message }: Diagnostic): string =>
  `${at?.file} ${at?.line} ${at?.column} ${code} ${message}`;

const worse = (a: number, b: number): number => Math.max(a, b);

function usersIn(shelf: Shelf, material: string, json: boolean, found: Found, io: Io): void {
  const users = usersOf(material, shelf);
  found.products.push(...users.map(({ name, code, file }) => ({ product: { name, code }, file })));
  if (json) return;
  io.out(
    users.length === 0
      ? `no product uses ${material}\n`
      : users.map(({ name, code, file }) => `${file}: ${name} (${code})\n`).join(''),
  );
}

const asJson = ({ products, materials, findings }: Found) => ({
  schema: 'labelwright/check/1',
  products,
  ...(materials.length > 0 && { materials }),
  findings: renderJson(findings),
});
