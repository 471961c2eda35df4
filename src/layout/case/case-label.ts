import type { ElementString } from '../../barcode/element-strings.ts';
import { symbolOnDots } from '../../barcode/printer-dots.ts';
import { encodeSymbol } from '../../barcode/symbols.ts';
import type { Millimetres } from '../../quantity/length.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import type { PagedDocument } from '../frame.ts';
import { DotPage } from './dot-page.ts';
import { fitElements, type PlacedSymbol } from './fit-symbols.ts';
import { type Format, thermalStock } from './thermal-stock.ts';

/** What a case label says, in words for its reader. */
export interface CaseLabel {
  readonly name: string;
  /** Contents, lot, dates, mass: a line each, the largest first. */
  readonly lines: readonly string[];
  /** Maker, draft notice: small. */
  readonly small: readonly string[];
  /** GTIN-14 of the case, or null. */
  readonly itf14: string | null;
  /** Groups of element strings that stay together. */
  readonly elements: readonly (readonly ElementString[])[];
  readonly title: string;
  readonly subject: string;
  /** ISO 8601 instant. */
  readonly date: string;
}

/** A label laid out, with the symbols on it. */
export interface LaidOut {
  readonly document: PagedDocument;
  readonly format: Format;
  readonly symbols: readonly PlacedSymbol[];
  /** Clear of the quiet zones at the edge of the label. */
  readonly edge: Millimetres;
  /** Data that are printed in words alone, since their bars did not fit. */
  readonly withoutBars: readonly ElementString[];
}

const GAP: Millimetres = 1.6;

/** A case label on 4 x 6 in stock, upright or on its side as the bars need; null where it fits neither way. */
export async function layoutCaseLabel(
  label: CaseLabel,
  dpi: number,
  fonts: FontLibrary,
): Promise<LaidOut | null> {
  const { value, least } = thermalStock.edge;
  const withoutLot = label.elements.filter(group => group.every(({ ai }) => ai !== '10'));
  for (const [format, edge, elements] of [
    ['portrait', value, label.elements],
    ['landscape', value, label.elements],
    ['portrait', least, label.elements],
    ['portrait', value, withoutLot],
    ['landscape', value, withoutLot],
  ] as const) {
    const page = new DotPage(format, dpi, fonts);
    const maxWidth = page.width - 2 * edge;
    const symbols = await symbolsOf({ ...label, elements }, dpi, maxWidth);
    if (!symbols) continue;
    if (!compose(label, symbols, page)) continue;
    const document = page.document(label.title, label.subject, label.date);
    const withoutBars = label.elements.filter(group => !elements.includes(group)).flat();
    return { document, format, symbols, edge, withoutBars };
  }
  return null;
}

async function symbolsOf(
  label: CaseLabel,
  dpi: number,
  maxWidth: Millimetres,
): Promise<PlacedSymbol[] | null> {
  const found: PlacedSymbol[] = [];
  if (label.itf14 !== null) {
    const symbol = await encodeSymbol('ITF-14', label.itf14, 'general-distribution');
    const geometry = symbolOnDots(symbol, { dpi, maxWidth });
    if (!geometry) return null;
    found.push({ symbol, geometry, elements: [] });
  }
  const others = await fitElements(label.elements, 'general-distribution', dpi, maxWidth);
  return others && [...found, ...others];
}

/** Words above, bars below. @returns whether all of it fits */
function compose(label: CaseLabel, symbols: readonly PlacedSymbol[], page: DotPage): boolean {
  const { margin, text } = thermalStock;
  const x = margin.value;
  const width = page.width - 2 * x;
  const barsHeight = symbols.reduce((sum, { geometry }) => sum + geometry.height + GAP, 0);
  const room = page.height - 2 * margin.value - barsHeight;
  const small = text.small.value;
  for (let share = 1; share >= 0; share -= 0.1) {
    const at = ({ largest, least }: { largest: number; least: number }) => least + (largest - least) * share;
    const [nameHeight, lineHeight] = [at(text.name), at(text.line)];
    const name = page.lines(label.name, 'bold', nameHeight, width);
    const lines = sideBySide(label.lines, page, lineHeight, width).flatMap(
      line => page.lines(line, 'regular', lineHeight, width) ?? [line],
    );
    const foot = sideBySide(label.small, page, small, width).flatMap(
      line => page.lines(line, 'regular', small, width) ?? [line],
    );
    const smallHeight = foot.length * small * 1.5;
    if (!name) continue;
    const height = name.length * nameHeight * 1.35 + lines.length * lineHeight * 1.5 + smallHeight + GAP;
    if (height > room) continue;
    let y = margin.value;
    for (const line of name) {
      page.text(line, { x, y, height: nameHeight, width, face: 'bold' }, 'H1');
      y += nameHeight * 1.35;
    }
    y += lineHeight * 0.3;
    for (const line of lines) {
      page.text(line, { x, y, height: lineHeight, width });
      y += lineHeight * 1.5;
    }
    for (const line of foot) {
      page.text(line, { x, y, height: small, width });
      y += small * 1.5;
    }
    // Bars stand at the foot, the space above them.
    y = page.height - margin.value - barsHeight + GAP;
    page.rule(x, y - GAP * 0.9, width);
    for (const { geometry, symbol } of symbols)
      y = page.symbol(geometry, y, `${symbol.spec.name} ${symbol.text}`) + GAP;
    return true;
  }
  return false;
}

/** Lines joined as long as they fit on one. */
function sideBySide(
  lines: readonly string[],
  page: DotPage,
  height: Millimetres,
  width: Millimetres,
): string[] {
  const joined: string[] = [];
  for (const line of lines) {
    const longer = joined.length > 0 ? `${joined.at(-1)}   ${line}` : line;
    if (joined.length > 0 && page.widthOf(longer, 'regular', height) <= width) joined.splice(-1, 1, longer);
    else joined.push(line);
  }
  return joined;
}
