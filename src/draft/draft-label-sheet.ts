import { type LotOrNone, labelSheet, type Places } from '../layout/many/label-sheet.ts';
import { writePdf } from '../pdf/write.ts';
import { preflight } from '../preflight/preflight.ts';
import type { LabelSheet } from '../record/label-sheet-schema.ts';
import { type Diagnostic, hasErrors } from '../report/diagnostic.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import { VERSION } from '../version.ts';
import type { SheetFact } from '../words/sheet-fact.ts';
import type { Words } from '../words/words.ts';
import type { ClassifiedProduct } from './classified-product.ts';
import { copyMark } from './inputs-of.ts';
import type { LabelDraft } from './try-draft-label.ts';

/** Many labels on the sheets of an office printer, or why they cannot be set. */
export interface DraftLabelSheet {
  readonly bytes: Uint8Array | null;
  readonly labels: number;
  readonly pages: number;
  readonly diagnostics: readonly Diagnostic[];
}

/** What office printers leave white at the edge of a page, in millimetres; common practice, no source. */
const UNPRINTED = 4.2;

/**
 * Sets a drafted label on sheets, as often as the description says, with a lot in the window of each.
 * @param copies of each lot, in place of those of the description; null leaves them
 */
export async function draftLabelSheet(
  product: ClassifiedProduct,
  { document, areas, stock }: LabelDraft,
  {
    sheet,
    file,
    copies,
  }: { readonly sheet: LabelSheet; readonly file: string; readonly copies: number | null },
  fonts: FontLibrary,
  words: Words,
): Promise<DraftLabelSheet> {
  if (!document || !stock) throw new Error('a label that was refused is not set on sheets');
  const { die, profile } = stock;
  const places: Places = {
    page: sheet.page,
    left: sheet.margin.left,
    top: sheet.margin.top,
    rows: sheet.rows,
    columns: sheet.columns,
    across: sheet.pitch.across ?? die.width,
    down: sheet.pitch.down ?? die.height,
    first: sheet.start - 1,
  };
  const lots = lotsOf(sheet, copies);
  const facts = factsOf(places, die, profile.safeZone.value);
  if (sheet.lots.length > 0 && !areas.some(({ role }) => role === 'lot-window'))
    facts.push({ id: 'no-window' });
  if (document.frames.some(({ items }) => items.some(({ kind }) => kind === 'art')))
    facts.push({ id: 'no-artwork' });
  const found = facts.map(fact => ({ ...words.labelSheet(fact, stock.unit ?? 'mm'), at: { file } }));
  if (hasErrors(found)) return { bytes: null, labels: 0, pages: 0, diagnostics: found };
  const many = labelSheet(document, areas, lots, places, fonts);
  const copy = copyMark(product, 'distribution');
  const bytes = await writePdf(many, fonts, { kind: 'sheet', version: VERSION, copy });
  const wrong = await preflight(bytes, { kind: 'sheet' });
  if (hasErrors(wrong))
    throw new Error(`preflight of the sheet: ${wrong.map(({ message }) => message).join('; ')}`);
  return { bytes, labels: lots.length, pages: many.frames.length, diagnostics: [...found, ...wrong] };
}

function lotsOf(
  { lots, rows, columns, start, copies }: LabelSheet,
  asked: number | null,
): readonly LotOrNone[] {
  const each = asked ?? copies;
  if (lots.length === 0) return Array<null>(each ?? rows * columns - start + 1).fill(null);
  return lots.flatMap(lot => Array<string>(each ?? 1).fill(lot));
}

function factsOf(
  { page, left, top, rows, columns, across, down }: Places,
  die: { readonly width: number; readonly height: number },
  safe: number,
): SheetFact[] {
  const facts: SheetFact[] = [];
  const [width, height] = [left + (columns - 1) * across + die.width, top + (rows - 1) * down + die.height];
  if (width > page.width + 1e-6)
    facts.push({ id: 'over-the-page', side: 'width', labels: width, page: page.width });
  if (height > page.height + 1e-6)
    facts.push({ id: 'over-the-page', side: 'height', labels: height, page: page.height });
  if (columns > 1 && across < die.width - 1e-6)
    facts.push({ id: 'over-each-other', side: 'width', pitch: across, label: die.width });
  if (rows > 1 && down < die.height - 1e-6)
    facts.push({ id: 'over-each-other', side: 'height', pitch: down, label: die.height });
  const edge = Math.min(left, top, page.width - width, page.height - height) + safe;
  if (edge < UNPRINTED) facts.push({ id: 'near-the-edge', edge, least: UNPRINTED });
  return facts;
}
