import { prefixFit } from '../barcode/company-prefix.ts';
import { gtinRegister, type NumberUse } from '../barcode/register.ts';
import { loadRecord } from '../record/load.ts';
import type { ProductRecord } from '../record/product-record.ts';
import { hasErrors } from '../report/diagnostic.ts';
import { renderText } from '../report/render.ts';
import { prefixFindings } from '../words/en/company-prefix.ts';
import { registerFindings, registerText } from '../words/en/gtin-register.ts';
import { nodeFiles } from './files.ts';
import { exit, type Io } from './io.ts';
import { FolderError, productFiles } from './record-files.ts';

/** Prints the register of a folder; the exit status is 1 for a number on two things, 2 for a record that cannot be read. */
export function registerOf(folder: string, prefix: string | null, json: boolean, io: Io): number {
  let paths: string[];
  try {
    paths = productFiles(folder);
  } catch (error) {
    if (!(error instanceof FolderError)) throw error;
    io.err(`${error.message}\n`);
    return exit.badInput;
  }
  if (paths.length === 0) {
    io.err(`${folder} holds no product record\n`);
    return exit.badInput;
  }
  const loaded = paths.map(path => loadRecord(path, nodeFiles));
  const register = gtinRegister(
    loaded.flatMap(outcome => (outcome.ok ? usesOf(outcome.value) : [])),
    prefix,
  );
  const unread = loaded.flatMap(({ ok, diagnostics }) => (ok ? [] : diagnostics));
  const gtins = register.entries.map(({ gtin14 }) => gtin14);
  const prefixed = prefix === null ? [] : prefixFindings(prefixFit(prefix, gtins), prefix);
  const findings = [...unread, ...registerFindings(register), ...prefixed];
  const missing = paths.filter((_, at) => !loaded[at]!.ok);
  if (json)
    io.out(
      `${JSON.stringify({ schema: 'labelwright/gtin-register/1', ...register, notRead: missing, findings }, null, 2)}\n`,
    );
  else io.out(`${registerText(register).join('\n')}\n`);
  if (findings.length > 0) io.err(renderText(findings));
  for (const path of missing) io.err(`the numbers of ${path} are not in the register\n`);
  if (missing.length > 0) return exit.badInput;
  return register.clashes.length > 0 || hasErrors(prefixed) ? exit.notMet : exit.done;
}

function usesOf({ name, code, packs }: ProductRecord): NumberUse[] {
  return packs.flatMap(pack => {
    const use = (gtin: string | null, level: NumberUse['level']): NumberUse[] =>
      gtin === null
        ? []
        : [
            {
              gtin,
              level,
              product: { name, code },
              pack: pack.id,
              file: pack.at.file,
              line: pack.at.line ?? null,
            },
          ];
    return [...use(pack.gtin, 'pack'), ...use(pack.case?.gtin ?? null, 'case')];
  });
}
