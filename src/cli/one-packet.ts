import { join } from 'node:path';
import { makePacket } from '../draft/packet.ts';
import type { Language } from '../notation/languages.ts';
import { usual } from '../reference/basis.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { MANIFEST } from '../store/manifest.ts';
import { loadFonts } from '../text/font-library.ts';
import { en } from '../words/en/index.ts';
import { leaveBehind, leaveOtherCodes, putReviewForm, store } from './deliver.ts';
import { openClassified, outputFolder } from './draft.ts';
import { againstFormer } from './former-sheet.ts';
import { exit, type Io } from './io.ts';
import { report } from './report.ts';

/** What came of the packet of one product. */
export interface OnePacket {
  /** Exit status of the contract. */
  readonly status: number;
  readonly written: readonly string[];
  readonly findings: readonly Diagnostic[];
  /** What a reviewer must look at, worst first, beside the findings. */
  readonly review: readonly string[];
}

/**
 * Makes the packet of one product and says what was found. A label that cannot be made is said and does not stop the
 * rest; without the data sheet there is no packet, and what was made before is marked as out of date.
 * @param date YYYY-MM-DD
 * @param out folder of the packet, where the call names one.
 */
export async function onePacket(
  path: string,
  {
    date,
    out,
    replace,
    language,
  }: {
    readonly date: string;
    readonly out: string | null;
    readonly replace: boolean;
    readonly language?: Language | null;
  },
  io: Io,
): Promise<OnePacket> {
  const nothing = (status: number): OnePacket => ({ status, written: [], findings: [], review: [] });
  const product = await openClassified(path, usual, date, io, out);
  if (!product) return nothing(exit.badInput);
  const packet = await makePacket(product, date, await loadFonts(), en, language ? [language] : undefined);
  report(packet.diagnostics, io);
  if (packet.refused) {
    report(await leaveBehind(path, out, 'the data sheet cannot be made'), io);
    return nothing(exit.notMet);
  }
  const folder = outputFolder(product.record.code, out);
  const { files, missing } = packet;
  const moved = packet.sheets.flatMap(({ basis, json }) =>
    againstFormer(product.record, folder, basis, json, io),
  );
  report(moved, io);
  const stored = await store(product, { folder, asOf: date, files, missing, replace, whole: true });
  report(stored.findings, io);
  if (stored.status !== exit.done) return nothing(stored.status);
  const after = [...(await leaveOtherCodes(path, folder)), ...putReviewForm(product)];
  report(after, io);
  return {
    status: missing.length > 0 ? exit.notMet : exit.done,
    written: [...stored.written, join(folder, MANIFEST)],
    findings: [...packet.diagnostics, ...moved, ...stored.findings, ...after],
    review: packet.review,
  };
}
