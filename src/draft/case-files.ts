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

/** The name of a file of a case. @param pack id of the pack */
export const caseFileName = (kind: CaseFileKind, pack: string): string =>
  kind === 'pallet-load' ? `pallet-${pack}.svg` : `${kind}-${pack}.pdf`;

/** Labels that were asked for and are not among the files, with the errors as the reason. */
export function missingCaseFiles(
  asked: readonly CaseFileKind[],
  pack: string,
  made: { readonly files: readonly CaseFile[]; readonly diagnostics: readonly Diagnostic[] },
): readonly { readonly name: string; readonly reason: string }[] {
  const reason = made.diagnostics.flatMap(({ severity, message }) => (severity === 'error' ? [message] : []));
  return asked
    .filter(kind => !made.files.some(file => file.kind === kind))
    .map(kind => ({ name: caseFileName(kind, pack), reason: reason.join('; ') }));
}
