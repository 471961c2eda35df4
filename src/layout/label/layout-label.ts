import { dotSize } from '../../barcode/printer-dots.ts';
import type { SizeFact } from '../../barcode/size-facts.ts';
import type { LabelModel } from '../../document/label.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import { fail, hasErrors, type Outcome, succeed } from '../../report/diagnostic.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import { MissingGlyphError } from '../../text/missing-glyph.ts';
import { ontoDots } from '../dot-grid.ts';
import type { FrameItem, PagedDocument, Tag } from '../frame.ts';
import { snapFrame } from '../snap.ts';
import type { PressProfile, Stock } from '../stock.ts';
import { areaBlocks, artUnder, regulatedParts, regulatedStock } from './art-areas.ts';
import { areaFindings, logoFindings } from './art-findings.ts';
import { type BarCode, factsOfSize, orientations } from './bar-code-sizes.ts';
import type { Area, Sheet } from './box.ts';
import { brandBand } from './brand-band.ts';
import { type LabelContent, labelContent } from './content.ts';
import { draftMark } from './draft-mark.ts';
import { encodeBarCode } from './encode-bar-code.ts';
import { findings } from './findings.ts';
import { bestFit, type Fitted } from './fit.ts';
import { fixedMarks, framed, frameFindings } from './fixed-marks.ts';
import { hasSides, legalStocks } from './legal-stock.ts';
import { logoItem } from './logo.ts';
import { type Parts, partsOf } from './parts.ts';
import { SLUG } from './press-marks.ts';
import { tapersTooMuch, tooSmall } from './refusal.ts';
import { type Remedies, remedies } from './remedies.ts';
import { technicalItems } from './technical-items.ts';

/** A label laid out, with what a check of it needs. */
export interface LabelLayout {
  readonly document: PagedDocument;
  /** Places of the sections on the trim. */
  readonly areas: readonly Area[];
  readonly fitted: Fitted;
  readonly content: LabelContent;
  readonly profile: PressProfile;
  readonly barCode: BarCode | null;
  /** What is to be told of the size of the bar code. */
  readonly barCodeFacts: readonly SizeFact[];
}

/**
 * Lays a label out on one page at the largest size that fits.
 * An error where it does not fit at the least sizes: nothing is set smaller than the press profile allows.
 */
export async function layoutLabel(
  model: LabelModel,
  fonts: FontLibrary,
  stock: Stock,
): Promise<Outcome<PagedDocument>> {
  const outcome = await arrangeLabel(model, fonts, stock);
  return outcome.ok ? succeed(outcome.value.document, outcome.diagnostics) : outcome;
}

/** As `layoutLabel`, with the places of the sections. */
export async function arrangeLabel(
  model: LabelModel,
  fonts: FontLibrary,
  stock: Stock,
): Promise<Outcome<LabelLayout>> {
  const { layout, diagnostics } = await tryLabel(model, fonts, stock);
  return layout ? succeed(layout, diagnostics) : fail(...diagnostics);
}

/** A label laid out, or the dies that would hold it. */
export interface Trial {
  readonly layout: LabelLayout | null;
  /** Where it does not fit: larger dies, each laid out. */
  readonly remedies: Remedies | null;
  readonly diagnostics: readonly Diagnostic[];
}

/** Lays a label out, and where it does not fit, seeks the smallest dies that hold it. */
export async function tryLabel(model: LabelModel, fonts: FontLibrary, given: Stock): Promise<Trial> {
  const tapers = tapersTooMuch(model, given);
  if (tapers) return { layout: null, remedies: null, diagnostics: [tapers] };
  const content = labelContent(model);
  const stocks = legalStocks(given, content, model.type, fonts);
  const [first] = stocks;
  const figure = content.sections.find(({ barCode }) => barCode)?.barCode ?? null;
  const { gtin } = model;
  const encoded = figure && gtin ? await encodeBarCode({ ...model, gtin }, figure, first!.profile) : null;
  if (encoded && 'severity' in encoded) return { layout: null, remedies: null, diagnostics: [encoded] };
  try {
    for (const stock of stocks.slice(0, -1)) {
      const trial = onStock(model, content, encoded, stock, fonts);
      if (!('parts' in trial)) return trial;
    }
    const stock = stocks.at(-1)!;
    const trial = onStock(model, content, encoded, stock, fonts);
    if (!('parts' in trial)) return trial;
    const larger = remedies(trial.parts, trial.stock, fonts);
    return {
      layout: null,
      remedies: larger,
      diagnostics: [tooSmall(model, trial.stock, larger), ...trial.diagnostics],
    };
  } catch (error) {
    if (!(error instanceof MissingGlyphError)) throw error;
    return { layout: null, remedies: null, diagnostics: [missingGlyph(error)] };
  }
}

/** What does not fit, to be tried on larger dies. */
interface Unfit {
  readonly parts: Parts;
  /** What was to hold them: the die, or the area of the regulated text in artwork. */
  readonly stock: Stock;
  readonly diagnostics: readonly Diagnostic[];
}

function onStock(
  model: LabelModel,
  content: LabelContent,
  barCode: BarCode | null,
  stock: Stock,
  fonts: FontLibrary,
): Trial | Unfit {
  const whole = partsOf(content, barCode, stock.profile, model);
  const { parts, pictograms, refusal } = framed(whole, stock);
  if (refusal) return { layout: null, remedies: null, diagnostics: [refusal] };
  const area = regulatedStock(stock);
  const [held, holder] = area ? [regulatedParts(parts, stock), area.stock] : [parts, stock];
  const best = hasSides(holder) ? bestFit(held, holder, fonts) : null;
  const found = findings(model, parts, stock, best);
  if (!best) return { parts: held, stock: holder, diagnostics: found };
  const blocks = area ? areaBlocks(parts, best, stock, fonts) : null;
  const fitted: Fitted = blocks?.bars ? { ...best, display: { ...best.display, bars: blocks.bars } } : best;
  const sheet = draw(fitted, area ?? { x: 0, y: 0 });
  for (const { box, x, y } of blocks?.placed ?? []) box.draw(sheet, x, y);
  if (blocks) found.push(...areaFindings(blocks, stock));
  if (hasErrors(found)) return { layout: null, remedies: null, diagnostics: found };
  const logo = logoItem(sheet, stock);
  found.push(...logoFindings(logo, stock));
  const { areas } = sheet;
  sheet.items.push(...fixedMarks(pictograms, stock));
  const document = paged(model, sheet, fitted, { content, logo, stock }, fonts);
  const shown = whole.placed.hazard?.pictograms.length ?? 0;
  found.push(...frameFindings(areas, pictograms, shown, stock, model.type));
  const barCodeFacts = barCode ? sizeOf(barCode, fitted, areas) : [];
  const layout = { document, areas, fitted, content, profile: stock.profile, barCode, barCodeFacts };
  return { layout, remedies: null, diagnostics: found };
}

function sizeOf(code: BarCode, { display }: Fitted, areas: readonly Area[]): readonly SizeFact[] {
  const turned = areas.find(({ role }) => role === 'bar-code')?.turned ?? false;
  const ways = orientations(code, display.bars);
  const way = ways.find(({ turn }) => (turn === 'ladder') === turned) ?? ways[0];
  return way ? factsOfSize(code, way.x) : [];
}

const missingGlyph = (error: MissingGlyphError): Diagnostic => ({
  code: 'missing-glyph',
  severity: 'error',
  message: error.message,
  hint: 'replace it; the face of the label has Latin, Greek and Cyrillic letters',
});

/** Draws the blocks at their places. */
function draw({ composition }: Fitted, from: { readonly x: number; readonly y: number }): Sheet {
  const sheet: Sheet = { items: [], areas: [] };
  for (const { box, x, y } of composition.placed) box.draw(sheet, from.x + x, from.y + y);
  return sheet;
}

function paged(
  model: LabelModel,
  sheet: Sheet,
  fitted: Fitted,
  {
    content,
    logo,
    stock,
  }: { readonly content: LabelContent; readonly logo: FrameItem | null; readonly stock: Stock },
  fonts: FontLibrary,
): PagedDocument {
  const { die, profile } = stock;
  const mark = content.sections.find(({ role }) => role === 'draft');
  const draft = mark ? draftMark(mark, model.notices, stock, sheet, fonts) : { under: [], over: [] };
  const items = [
    ...artUnder(stock),
    ...draft.under,
    ...brandBand(sheet, fitted, stock),
    ...(logo ? [logo] : []),
    ...draft.over,
    ...inReadingOrder(sheet.items, content.root),
    ...(model.panel || profile.dpi !== undefined ? [] : technicalItems(sheet.areas, stock, fonts)),
  ];
  const bleed = model.panel ? 0 : profile.bleed.value;
  const laid = profile.dpi === undefined ? items : ontoDots(items, dotSize(profile.dpi));
  const frame = {
    width: die.width,
    height: die.height,
    bleed,
    slug: stock.jobLine === undefined ? 0 : SLUG,
    items: laid,
  };
  const { title, language, subject, date } = model;
  return { frames: [snapFrame(frame)], root: content.root, title, language, subject, date, attachments: [] };
}

/** Artifacts first, then everything in the order of the structure tree. */
function inReadingOrder(items: readonly FrameItem[], root: Tag): FrameItem[] {
  const order = new Map<Tag, number>();
  const visit = (tag: Tag) => {
    order.set(tag, order.size);
    tag.children.forEach(visit);
  };
  visit(root);
  const place = ({ tag }: FrameItem) => (typeof tag === 'string' ? -1 : (order.get(tag) ?? order.size));
  return [...items].sort((a, b) => place(a) - place(b));
}
