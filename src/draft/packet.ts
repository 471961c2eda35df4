import { fillPage } from '../document/template.ts';
import { packagePath } from '../reference/package-files.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import { tellAll } from '../words/telling.ts';
import type { Words } from '../words/words.ts';
import { classificationJson } from './classification-json.ts';
import type { ClassifiedProduct } from './classified-product.ts';
import { draftLabel } from './draft-label.ts';
import { draftSheet } from './draft-sheet.ts';
import { reviewPoints } from './review-points.ts';
import { workSheetMarkdown } from './work-sheet.ts';

/** A file of the packet with what it is. */
export interface PacketFile {
  readonly name: string;
  readonly what: string;
  readonly bytes: Uint8Array | string;
}

export interface Packet {
  readonly files: readonly PacketFile[];
  /** What a reviewer must look at. */
  readonly review: readonly string[];
  /** Findings of the parts; where one is an error, that part is not among the files. */
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Everything for one product: labels of all packs, data sheet, classification, work sheet and an index page.
 * @param date YYYY-MM-DD
 */
export async function makePacket(
  product: ClassifiedProduct,
  date: string,
  fonts: FontLibrary,
  words: Words,
): Promise<Packet> {
  const { record, classification, elements } = product;
  const files: PacketFile[] = [];
  const diagnostics: Diagnostic[] = [];
  for (const pack of record.packs) {
    const label = await draftLabel(product, { pack, audience: 'us-workplace', date }, fonts, words);
    diagnostics.push(...label.diagnostics);
    if (label.ok)
      files.push({
        name: `label-${pack.id}.pdf`,
        what: `label of ${pack.contents.written}, one page at die size`,
        bytes: label.value,
      });
  }
  const sheet = await draftSheet(product, { date, paper: 'letter' }, fonts, words);
  diagnostics.push(...sheet.diagnostics);
  if (sheet.ok) {
    files.push(
      { name: 'sds.pdf', what: 'safety data sheet, 16 sections', bytes: sheet.value.pdf },
      { name: 'sds.html', what: 'safety data sheet as a web page', bytes: sheet.value.html },
      { name: 'sds.json', what: 'safety data sheet as data', bytes: sheet.value.json },
    );
  }
  files.push(
    {
      name: 'classification.json',
      what: 'classification with reasons, as data',
      bytes: `${JSON.stringify(classificationJson(record, classification, elements, words), null, 2)}\n`,
    },
    {
      name: 'work-sheet.md',
      what: 'work sheet: every class worked as on paper',
      bytes: workSheetMarkdown({ record, classification, elements, words }),
    },
  );
  const found = [...new Map(diagnostics.map(each => [JSON.stringify(each), each])).values()];
  const review = reviewPoints(product, words);
  const index = await indexPage(product, files, review, found, date, words);
  return {
    files: [...files, { name: 'index.html', what: 'index of this packet', bytes: index }],
    review,
    diagnostics: found,
  };
}

const indexPage = (
  { record: { name, code }, classification, elements }: ClassifiedProduct,
  files: readonly PacketFile[],
  review: readonly string[],
  diagnostics: readonly Diagnostic[],
  date: string,
  words: Words,
): Promise<string> =>
  fillPage(packagePath('templates'), 'packet/index.hbs', {
    name,
    code,
    date,
    basis: classification.basis.title,
    signalWord: elements.signalWord ?? 'none',
    hazards: classification.hazards.map(({ code: hazard, route, effect, because }) => ({
      hazard: `${hazard}${route ? ` (${route})` : ''}${effect ? ` (${effect})` : ''}`,
      working: words.because(because, tellAll(classification)).working,
      cite: words.cites(because.cites),
    })),
    files: files.map(({ name: file, what }) => ({ file, what })),
    review,
    findings: diagnostics.map(({ severity, message, hint }) => ({ severity, message, hint: hint ?? null })),
  });
