import { labelSymbol } from '../../barcode/gtin.ts';
import { symbolSpec } from '../../barcode/spec.ts';
import { encodeSymbol } from '../../barcode/symbols.ts';
import type { LabelModel } from '../../document/label.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import { fail, type Outcome, succeed } from '../../report/diagnostic.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import { MissingGlyphError } from '../../text/missing-glyph.ts';
import type { FrameItem, PagedDocument, Segment, Tag } from '../frame.ts';
import { snapFrame } from '../snap.ts';
import type { Die, PressProfile, Stock } from '../stock.ts';
import type { BarCode } from './bar-code-block.ts';
import { type Area, type Box, move } from './box.ts';
import { labelContent } from './content.ts';
import { findings } from './findings.ts';
import { bestFit, type Fitted } from './fit.ts';
import { partsOf } from './parts.ts';
import { tooSmall } from './refusal.ts';
import { wordShaping } from './word-shaping.ts';

/** A label laid out, with what a check of it needs. */
export interface LabelLayout {
  readonly document: PagedDocument;
  /** Places of the sections on the trim. */
  readonly areas: readonly Area[];
  readonly fitted: Fitted;
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
  const content = labelContent(model);
  const figure = content.sections.find(({ barCode }) => barCode)?.barCode ?? null;
  const barCode = figure && model.gtin ? await encode(model, figure, stock.profile) : null;
  const parts = partsOf(content, barCode, stock.profile, model.lotWindow);
  const shaping = wordShaping(fonts);
  try {
    const fitted = bestFit(parts, stock, shaping);
    if (!fitted) return fail(tooSmall(model, parts, stock, shaping), ...findings(model, parts, stock, null));
    const layout = { document: paged(model, fitted, content.root, stock), areas: areasOf(fitted), fitted };
    return succeed(layout, findings(model, parts, stock, fitted));
  } catch (error) {
    if (error instanceof MissingGlyphError) return fail(missingGlyph(error));
    throw error;
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

const onTrim = ({ box, measures }: Fitted): Box => move(box, measures.margin, measures.margin);

const areasOf = (fitted: Fitted): readonly Area[] => onTrim(fitted).areas;

function paged(model: LabelModel, fitted: Fitted, root: Tag, { die, profile }: Stock): PagedDocument {
  const items = [...inReadingOrder(onTrim(fitted).items, root), dieLine(die, profile)];
  const frame = { width: die.width, height: die.height, bleed: profile.bleed.value, slug: 0, items };
  const { title, language, subject, date } = model;
  return { frames: [snapFrame(frame)], root, title, language, subject, date, attachments: [] };
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

/** Length of the control lines of a quarter circle of radius 1. */
const CIRCLE = (4 / 3) * Math.tan(Math.PI / 8);

/** Outline of the die on its own layer, drawn last. */
function dieLine({ width, height, cornerRadius }: Die, { rule }: PressProfile): FrameItem {
  const r = Math.min(cornerRadius, width / 2, height / 2);
  const k = r * (1 - CIRCLE);
  const segments: Segment[] = [
    ['M', r, 0],
    ['L', width - r, 0],
    ['C', width - k, 0, width, k, width, r],
    ['L', width, height - r],
    ['C', width, height - k, width - k, height, width - r, height],
    ['L', r, height],
    ['C', k, height, 0, height - k, 0, height - r],
    ['L', 0, r],
    ['C', 0, k, k, 0, r, 0],
    ['Z'],
  ];
  return { kind: 'path', tag: 'layout', layer: 'die', segments, stroke: 'die', strokeWidth: rule.thin };
}
