import type { PagedDocument } from '../layout/frame.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import type { CaseFileKind } from '../words/en/case.ts';

/** A file of a case, with its page where it is a label. */
export interface CaseFile {
  readonly kind: CaseFileKind;
  readonly name: string;
  readonly bytes: Uint8Array | string;
  readonly document: PagedDocument | null;
}

/** What only the day of production knows; null where it is not told. */
export interface CaseBatch {
  readonly lot: string | null;
  readonly made: string | null;
  readonly useBy: string | null;
}

/** A lot as part of the name of a file: other signs than letters, digits, dots and hyphens by their code. */
const inFileName = (text: string): string =>
  text.replace(/[^A-Za-z0-9.-]/g, sign => `_${sign.codePointAt(0)!.toString(16).toUpperCase()}`);

/**
 * The name of a file of a case. A case label of a batch bears the lot, else the dates, in its name, so that the one
 * before a batch does not take its place.
 * @param pack id of the pack
 */
export function caseFileName(kind: CaseFileKind, pack: string, batch: CaseBatch | null = null): string {
  if (kind === 'pallet-load') return `pallet-${pack}.svg`;
  const { lot = null, made = null, useBy = null } = batch ?? {};
  const told = kind === 'case' ? (lot === null ? [made, useBy] : [lot]).filter(text => text !== null) : [];
  return `${[kind, pack, ...told.map(inFileName)].join('-')}.pdf`;
}

/** Labels that were asked for and are not among the files, with the errors as the reason. */
export function missingCaseFiles(
  asked: readonly CaseFileKind[],
  { pack, batch }: { readonly pack: { readonly id: string }; readonly batch: CaseBatch },
  made: { readonly files: readonly CaseFile[]; readonly diagnostics: readonly Diagnostic[] },
): readonly { readonly name: string; readonly reason: string }[] {
  const reason = made.diagnostics.flatMap(({ severity, message }) => (severity === 'error' ? [message] : []));
  return asked
    .filter(kind => !made.files.some(file => file.kind === kind))
    .map(kind => ({ name: caseFileName(kind, pack.id, batch), reason: reason.join('; ') }));
}
