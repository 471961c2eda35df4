import { prefixFit } from '../barcode/company-prefix.ts';
import { gtinRegister, type NumberUse } from '../barcode/register.ts';
import type { RecordEnv } from '../record/files.ts';
import { kindOfFile, loadRecord } from '../record/load.ts';
import type { ProductRecord } from '../record/product-record.ts';
import { hasErrors } from '../report/diagnostic.ts';
import { renderJson } from '../report/render.ts';
import { prefixFindings } from '../words/en/company-prefix.ts';
import { folderFinding, notRegistered, registerFindings, registerText } from '../words/en/gtin-register.ts';
import { exit, type Io } from './io.ts';
import { report } from './report.ts';

/** Prints the register of a folder; the exit status is 1 for a number on two things, 2 for a record that cannot be read. */
export function registerOf(folder: string, prefix: string | null, json: boolean, io: Io): number {
  const { kind } = io.files.statFile(folder);
  const paths = kind === 'directory' ? productsBelow(folder, io.files) : [];
  if (paths.length === 0) {
    report([folderFinding(folder, kind === 'directory')], io);
    return exit.badInput;
  }
  // The folder is the tree that its records may name files of.
  const files = { ...io.files, allow: [...(io.files.allow ?? []), folder] };
  const loaded = paths.map(path => loadRecord(path, files));
  const register = gtinRegister(
    loaded.flatMap(outcome => (outcome.ok ? usesOf(outcome.value) : [])),
    prefix,
  );
  const unread = loaded.flatMap(({ ok, diagnostics }) => (ok ? [] : diagnostics));
  const gtins = register.entries.map(({ gtin14 }) => gtin14);
  const prefixed = prefix === null ? [] : prefixFindings(prefixFit(prefix, gtins), prefix);
  const missing = paths.filter((_, at) => !loaded[at]!.ok);
  const findings = [...unread, ...registerFindings(register), ...prefixed, ...missing.map(notRegistered)];
  if (json)
    io.out(
      `${JSON.stringify({ schema: 'labelwright/gtin-register/1', ...register, notRead: missing, findings: renderJson(findings) }, null, 2)}\n`,
    );
  else io.out(`${registerText(register).join('\n')}\n`);
  report(findings, io);
  if (missing.length > 0) return exit.badInput;
  return register.clashes.length > 0 || hasErrors(prefixed) ? exit.notMet : exit.done;
}

const productsBelow = (folder: string, files: RecordEnv): string[] =>
  (files.listFiles?.(folder) ?? []).filter(
    path => /\.(?:ya?ml|json)$/i.test(path) && kindOfFile(path, files) === 'product',
  );

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
