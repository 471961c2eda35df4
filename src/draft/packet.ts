import { fillPage } from '../document/template.ts';
import { readTemplate } from '../environment/package-files.ts';
import type { Language } from '../notation/languages.ts';
import type { CopyKind, CopyMark } from '../provenance/copy-mark.ts';
import type { BasisId } from '../reference/basis.ts';
import { type Diagnostic, firstError, hasErrors } from '../report/diagnostic.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import { tellAll } from '../words/telling.ts';
import type { Words } from '../words/words.ts';
import { answerOf } from './answer.ts';
import { askedRows } from './asked-rows.ts';
import type { ClassifiedProduct } from './classified-product.ts';
import type { ReviewedSheet } from './draft-sheet.ts';
import { dutiesOf } from './duties.ts';
import { copyMark } from './inputs-of.ts';
import { labelPicture } from './label-picture.ts';
import { marketSheets, sheetFiles } from './market-sheets.ts';
import { packetCases } from './packet-cases.ts';
import type { PictureFormat } from './picture-format.ts';
import { dueLabels, labelStem } from './purposes/due-labels.ts';
import type { PacketLabel } from './review/labels.ts';
import { reviewPage } from './review/review-page.ts';
import { pointLines, reviewPoints } from './review/review-points.ts';
import { reviewFiles } from './review-files.ts';
import { documentLanguages, spokenFiles } from './spoken-files.ts';
import { supplierQuestions } from './supplier-questions.ts';
import { tryDraftLabel } from './try-draft-label.ts';

/** Name of the page from which a qualified person reviews. */
export const REVIEW_PAGE = 'review.html';

/** A file of the packet with what it is. */
export interface PacketFile {
  readonly name: string;
  readonly what: string;
  readonly kind: CopyKind;
  readonly bytes: Uint8Array | string;
}

export interface Packet {
  readonly files: readonly PacketFile[];
  /** The data sheets as JSON. */
  readonly sheets: readonly { readonly basis: BasisId; readonly json: string }[];
  /** What a reviewer must look at, worst first, beside the findings. */
  readonly review: readonly string[];
  /** Labels and sheets that do not fit or lack a fact, with the reason; the rest of the packet stands without them. */
  readonly missing: readonly { readonly name: string; readonly reason: string }[];
  /** Whether there is no packet at all: the data sheet cannot be made. */
  readonly refused: boolean;
  /** Findings of the parts; where one is an error, that part is not among the files. */
  readonly diagnostics: readonly Diagnostic[];
}

/** What a packet holds beside what every one does. */
export interface PacketWishes {
  /** Languages of labels and sheets, beside English; those of the record where they are left out. */
  readonly languages?: readonly Language[];
  /** How each label is drawn for listings. */
  readonly pictures?: PictureFormat | null;
}

/**
 * Everything for one product: labels of all packs and of their cases, data sheets of its markets, classification, work
 * sheet, transport of the first pack, the reviewer's page and an index page. A label that cannot be made does not stop the rest.
 * @param date YYYY-MM-DD
 */
export async function makePacket(
  product: ClassifiedProduct,
  date: string,
  fonts: FontLibrary,
  words: Words,
  { languages = documentLanguages(product.record), pictures = null }: PacketWishes = {},
): Promise<Packet> {
  const { record } = product;
  const files: PacketFile[] = [];
  const missing: { name: string; reason: string }[] = [];
  const diagnostics: Diagnostic[] = [];
  const review = copyMark(product, 'review');
  const labels: PacketLabel[] = [];
  const due = dueLabels(product);
  for (const pack of record.packs)
    for (const purpose of due.made) {
      const draft = await tryDraftLabel(product, { pack, purpose, date }, fonts, words);
      diagnostics.push(...draft.diagnostics);
      const stem = labelStem(pack.id, purpose, due);
      const name = `${stem}.pdf`;
      labels.push({ name, draft });
      if (draft.bytes)
        files.push({
          name,
          what: `${words.purposeName(purpose)}, ${pack.contents.written}, one page at die size`,
          kind: 'distribution',
          bytes: draft.bytes,
        });
      else missing.push({ name, reason: firstError(draft.diagnostics) });
      if (!draft.bytes || pictures === null) continue;
      const drawn = await labelPicture(product, draft, { format: pictures, stem }, fonts);
      diagnostics.push(...drawn.findings);
      const what = `picture of ${name} for listings`;
      files.push(...drawn.files.map(file => ({ ...file, what })));
    }
  const cases = await packetCases(product, date, fonts);
  files.push(...cases.files);
  missing.push(...cases.missing);
  labels.push(...cases.labels);
  diagnostics.push(...cases.labels.flatMap(({ draft }) => draft.diagnostics));
  const sheets = await marketSheets(product, date, fonts, words);
  for (const { basis, name, sheet } of sheets) {
    diagnostics.push(...sheet.diagnostics);
    if (sheet.ok) files.push(...sheetFiles(sheet.value, basis));
    else missing.push({ name, reason: firstError(sheet.diagnostics) });
  }
  const spokenLabels: PacketLabel[] = [];
  const spokenSheets: { name: string; sheet: ReviewedSheet }[] = [];
  for (const language of languages.filter(each => each !== 'en')) {
    const spoken = await spokenFiles(product, date, fonts, words, language);
    files.push(...spoken.files);
    spokenLabels.push(...spoken.labels);
    spokenSheets.push(...spoken.sheets);
    missing.push(...spoken.missing);
    diagnostics.push(...spoken.diagnostics);
  }
  const duties = dutiesOf(product);
  files.push(...reviewFiles(product, date, duties, review, words));
  const found = saidOnce(diagnostics);
  const made = sheets.flatMap(({ basis, name, sheet }) =>
    sheet.ok ? [{ basis, name, sheet: sheet.value }] : [],
  );
  const drafts = made.map(({ sheet }) => sheet);
  const points = reviewPoints(
    { product, sheets: drafts, labels, duties, missing, diagnostics: found },
    words,
  );
  const lines = pointLines(points, drafts, words);
  files.unshift({
    name: REVIEW_PAGE,
    what: "reviewer's page: what to check, worst first, with label, sections and reasons",
    kind: 'review',
    bytes: await reviewPage(
      {
        product,
        points,
        labels: [...labels, ...spokenLabels],
        sheets: made,
        spoken: spokenSheets,
        duties,
        files,
        date,
        copy: review,
      },
      fonts,
      words,
    ),
  });
  const listed = words.duties(duties);
  const index = await indexPage(product, files, lines, listed, found, date, review, words);
  return {
    files: [...files, { name: 'index.html', what: 'index of this packet', kind: 'review', bytes: index }],
    missing,
    refused: sheets.every(({ sheet }) => !sheet.ok),
    sheets: made.map(({ basis, sheet }) => ({ basis, json: sheet.json })),
    review: lines,
    diagnostics: found,
  };
}

/** Findings without those that several documents share; what refuses one of them is not told as a warning of another. */
function saidOnce(findings: readonly Diagnostic[]): readonly Diagnostic[] {
  const said = (finding: Diagnostic) => JSON.stringify({ ...finding, severity: null });
  const refusing = new Set(findings.filter(each => hasErrors([each])).map(said));
  const kept = findings.filter(each => hasErrors([each]) || !refusing.has(said(each)));
  return [...new Map(kept.map(each => [JSON.stringify(each), each])).values()];
}

const indexPage = (
  { record: { name, code }, formula, classification, elements }: ClassifiedProduct,
  files: readonly PacketFile[],
  review: readonly string[],
  duties: readonly string[],
  diagnostics: readonly Diagnostic[],
  date: string,
  copy: CopyMark,
  words: Words,
): Promise<string> =>
  fillPage(readTemplate, 'packet/index.hbs', {
    name,
    code,
    date,
    copy,
    basis: classification.basis.title,
    signalWord: elements.signalWord ?? 'none',
    answer: words.answer.lines(answerOf(classification, elements), tellAll(classification).names),
    askTitle: words.answer.ask.title,
    ask: askedRows(supplierQuestions(classification, formula), classification, words).map(
      ([subject, missing]) => ({ subject, missing }),
    ),
    hazards: classification.hazards.map(({ code: hazard, route, effect, because }) => ({
      hazard: `${hazard}${route ? ` (${route})` : ''}${effect ? ` (${effect})` : ''}`,
      working: words.because(because, tellAll(classification)).working,
      cite: words.cites(because.cites),
    })),
    files: files.map(({ name: file, what }) => ({ file, what })),
    duties,
    review,
    findings: diagnostics.map(({ severity, message, hint }) => ({ severity, message, hint: hint ?? null })),
  });
