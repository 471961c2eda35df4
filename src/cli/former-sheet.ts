import { join } from 'node:path';
import { sheetForm } from '../document/sheet/form.ts';
import { revisionFindings } from '../draft/revision-findings.ts';
import type { BasisId } from '../reference/basis.ts';
import type { Io } from './io.ts';

type Files = Pick<Io, 'files'>;

/** The JSON of the data sheet that stands in an output folder; null where none does. */
export function formerSheet(folder: string, basis: BasisId, { files }: Files): string | null {
  const path = join(folder, `${sheetForm(basis).file}.json`);
  if (files.statFile(path).kind !== 'file') return null;
  try {
    return new TextDecoder().decode(files.readFile(path));
  } catch {
    return null;
  }
}

/** What the data sheet of a product says against the one that stands in the output folder. @param now its JSON */
export const againstFormer = (
  record: Parameters<typeof revisionFindings>[0],
  folder: string,
  basis: BasisId,
  now: string,
  io: Files,
) => revisionFindings(record, formerSheet(folder, basis, io), now);
