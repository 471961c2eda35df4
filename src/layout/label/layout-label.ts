import { labelSymbol } from '../../barcode/gtin.ts';
import { symbolSpec } from '../../barcode/spec.ts';
import { encodeSymbol } from '../../barcode/symbols.ts';
import type { LabelModel } from '../../document/label.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import { fail, type Outcome, succeed } from '../../report/diagnostic.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import { MissingGlyphError } from '../../text/missing-glyph.ts';
import { outlineOf } from '../die/outline.ts';
import type { FrameItem, PagedDocument, Tag } from '../frame.ts';
import { snapFrame } from '../snap.ts';
import type { Die, PressProfile, Stock } from '../stock.ts';
import type { BarCode } from './bar-code-block.ts';
import type { Area, Sheet } from './box.ts';
import { type LabelContent, labelContent } from './content.ts';
import { draftMark } from './draft-mark.ts';
import { findings } from './findings.ts';
import { bestFit, type Fitted } from './fit.ts';
import { legalXHeight } from './legal-size.ts';
import { partsOf } from './parts.ts';
import { tooSmall } from './refusal.ts';
import { type Remedies, remedies } from './remedies.ts';

/** A label laid out, with what a check of it needs. */
export interface LabelLayout {
  readonly document: PagedDocument;
  /** Places of the sections on the trim. */
  readonly areas: readonly Area[];
  readonly fitted: Fitted;
  readonly content: LabelContent;
  readonly profile: PressProfile;
  readonly barCode: BarCode | null;
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
  const content = labelContent(model);
  const stock = model.type ? { ...given, legalXHeight: legalXHeight(content, model.type, fonts) } : given;
  const figure = content.sections.find(({ barCode }) => barCode)?.barCode ?? null;
  const barCode = figure && model.gtin ? await encode(model, figure, stock.profile) : null;
  const parts = partsOf(content, barCode, stock.profile, model);
  try {
    const fitted = bestFit(parts, stock, fonts);
    const found = findings(model, parts, stock, fitted);
    if (!fitted) {
      const larger = remedies(parts, stock, fonts);
      return { layout: null, remedies: larger, diagnostics: [tooSmall(model, stock, larger), ...found] };
    }
    const sheet = draw(fitted);
    const document = paged(model, sheet, content, stock, fonts);
    const layout = { document, areas: sheet.areas, fitted, content, profile: stock.profile, barCode };
    return { layout, remedies: null, diagnostics: found };
  } catch (error) {
    if (!(error instanceof MissingGlyphError)) throw error;
    return { layout: null, remedies: null, diagnostics: [missingGlyph(error)] };
  }
}

async function encode(
  model: LabelModel,
  tag: Tag,
  { barCode, barWidthReduction }: PressProfile,
): Promise<BarCode> {
  const { name, digits } = labelSymbol(model.gtin!);
  // A symbol that is not scanned at the point of sale is made for warehouses.
  const environment = symbolSpec(name, barCode.environment) ? barCode.environment : 'general-distribution';
  return {
    symbol: await encodeSymbol(name, digits, environment),
    tag,
    barWidthReduction: barWidthReduction.value,
    diameter: model.container?.shape === 'cylinder' ? model.container.diameter : null,
  };
}

const missingGlyph = (error: MissingGlyphError): Diagnostic => ({
  code: 'missing-glyph',
  severity: 'error',
  message: error.message,
  hint: 'replace it; the face of the label has Latin, Greek and Cyrillic letters',
});

/** Draws the blocks at their places. */
function draw({ composition }: Fitted): Sheet {
  const sheet: Sheet = { items: [], areas: [] };
  for (const { box, x, y } of composition.placed) box.draw(sheet, x, y);
  return sheet;
}

function paged(
  model: LabelModel,
  sheet: Sheet,
  content: LabelContent,
  stock: Stock,
  fonts: FontLibrary,
): PagedDocument {
  const { die, profile } = stock;
  const mark = content.sections.find(({ role }) => role === 'draft');
  const items = [
    ...(mark ? draftMark(mark, die, profile, sheet, fonts) : []),
    ...inReadingOrder(sheet.items, content.root),
    ...(model.panel ? [] : [dieLine(die, profile)]),
  ];
  const bleed = model.panel ? 0 : profile.bleed.value;
  const frame = { width: die.width, height: die.height, bleed, slug: 0, items };
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

/** Outline of the die on its own layer, drawn last. */
const dieLine = (die: Die, { rule }: PressProfile): FrameItem => ({
  kind: 'path',
  tag: 'layout',
  layer: 'die',
  segments: outlineOf(die).segments,
  stroke: 'die',
  strokeWidth: rule.thin,
});
