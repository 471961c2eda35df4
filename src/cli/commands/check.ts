import { statSync } from 'node:fs';
import { checkGlyphs, hasRareCharacters } from '../../draft/check-glyphs.ts';
import { checkedProduct } from '../../draft/checked-product.ts';
import { dutyJson } from '../../draft/duty-json.ts';
import { labelQuestions } from '../../draft/label-questions.ts';
import { openProduct } from '../../draft/open-product.ts';
import { openReference, type Reference } from '../../draft/open-reference.ts';
import { revisionFindings } from '../../draft/revision-findings.ts';
import type { RecordEnv } from '../../record/files.ts';
import { readShelf, type Shelf, usersOf } from '../../record/shelf.ts';
import { usual } from '../../reference/basis.ts';
import { type Diagnostic, hasErrors } from '../../report/diagnostic.ts';
import { renderJson } from '../../report/render.ts';
import { en } from '../../words/en/index.ts';
import { parseArguments, UsageError } from '../arguments.ts';
import { checkJson } from '../check-json.ts';
import { shelfJson, shelfText } from '../check-shelf.ts';
import { checkText, dutiesText } from '../check-text.ts';
import type { Command } from '../command.ts';
import { outputFolder } from '../draft.ts';
import { formerSheet } from '../former-sheet.ts';
import { inputStatus } from '../input-status.ts';
import { exit, type Io } from '../io.ts';
import { allow, asOf, json, out, records } from '../options.ts';
import { examineOutputs } from '../outputs.ts';
import { report } from '../report.ts';

/** The command as data. */
export const command: Command = {
  name: 'check',
  does: 'reads and validates records, expands the formula to constituents that sum to 100 %, reports unknowns',
  place: 20,
  about: [
    'Writes nothing. All that is wrong is said at once, with file, line, column and what would be right.',
    'A folder in place of a record is read whole: its products, its raw materials with the age of their sheets, and what is used twice.',
  ],
  argument: { ...records, does: 'product records, YAML or JSON, or a folder of them' },
  options: {
    uses: {
      kind: 'text',
      value: 'RAW-MATERIAL',
      does: 'lists the products of the folder that use a raw material',
    },
    outputs: {
      kind: 'flag',
      does: 'says whether the files made from the record belong together and to the record as it is now',
    },
    out,
    json,
    'as-of': asOf,
    allow,
  },
  examples: [
    { call: 'check product.yaml', does: 'what the record makes of the formula, or what is wrong with it' },
    { call: 'check . --uses drums/x.yaml', does: 'which products of this folder use a drum' },
  ],
  run,
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
  const parsed = parseArguments(args, command);
  const asOf = parsed.text('as-of') ?? io.today;
  const [files, json, uses] = [io.files, parsed.flag('json'), parsed.text('uses')];
  const reference = await openReference(usual, asOf);
  if (!reference.ok) {
    report(reference.diagnostics, io);
    return exit.badInput;
  }
  const found: Found = { status: exit.done, products: [], materials: [], findings: [] };
  const tell = (diagnostics: readonly Diagnostic[]): void => {
    found.findings.push(...diagnostics);
    report(diagnostics, io);
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
    const folder = outputFolder(opened.value.record.code, parsed.text('out'));
    const against = parsed.flag('outputs') ? examineOutputs(opened.value, folder) : null;
    if (against && against.length > 0) found.status = worse(found.status, exit.notMet);
    found.findings.push(...(against ?? []));
    report(against ?? [], io);
    const {
      labels,
      open: questions,
      findings: stated,
      duties,
    } = labelQuestions(opened.value, reference.value as Reference, en);
    tell(stated);
    const former = formerSheet(folder, usual, io);
    if (former !== null && opened.value.record.revision !== null) {
      const { classifyProduct } = await import('../../draft/classified-product.ts');
      const { sheetDataOf } = await import('../../draft/draft-sheet.ts');
      const now = await sheetDataOf(classifyProduct(opened.value, reference.value as Reference), asOf, en);
      if (now !== null) tell(revisionFindings(opened.value.record, former, now));
    }
    found.products.push({
      ...checkJson(checked),
      labels,
      questions,
      duties: duties.map(dutyJson),
      ...(against && outputsJson(folder, against)),
    });
    if (!json)
      io.out(
        checkText(checked, notes) +
          labels.map(each => `  labels: ${each}\n`).join('') +
          questions.map(each => `  asks: ${each}\n`).join('') +
          dutiesText(duties) +
          (against ? outputsText(folder, against) : ''),
      );
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
  const isRead = found.products.length > 0 || found.materials.length > 0;
  if (json && (isRead || found.status === exit.done)) io.out(`${JSON.stringify(asJson(found), null, 2)}\n`);
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

const outputsText = (folder: string, against: readonly Diagnostic[]): string =>
  against.length === 0
    ? `  ${folder}: the files belong together and to the record as it is now\n`
    : `  ${folder}: not a packet of the record as it is now\n`;

const outputsJson = (folder: string, against: readonly Diagnostic[]) => ({
  outputs: { folder, current: against.length === 0, findings: renderJson(against) },
});

const asJson = ({ products, materials, findings }: Found) => ({
  schema: 'labelwright/check/1',
  products,
  ...(materials.length > 0 && { materials }),
  findings: renderJson(findings),
});
