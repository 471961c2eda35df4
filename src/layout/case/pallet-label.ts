import { dataTitle, type ElementString } from '../../barcode/element-strings.ts';
import type { Millimetres } from '../../quantity/length.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import type { LaidOut } from './case-label.ts';
import { DotPage } from './dot-page.ts';
import { fitElements, type PlacedSymbol } from './fit-symbols.ts';
import { thermalStock } from './thermal-stock.ts';

/** What a logistic label says (GS1 General Specifications 6.6). */
export interface PalletLabel {
  /** Sender and what is on the pallet, free text. */
  readonly free: readonly string[];
  readonly sscc: string;
  /** Contents, count, dates, lot: groups that stay in one symbol. */
  readonly elements: readonly (readonly ElementString[])[];
  /** How values are shown beside their data title: a date of six digits as a calendar date. */
  readonly shown: (element: ElementString) => string;
  readonly title: string;
  readonly subject: string;
  /** ISO 8601 instant. */
  readonly date: string;
}

/** The logistic label with the height of its data text, which should be 7 mm. */
export interface LaidOutPallet extends LaidOut {
  readonly dataHeight: Millimetres;
}

const GAP: Millimetres = 1.2;

/**
 * A logistic label on 4 x 6 in stock: free text, data with their titles, bars upright, the SSCC lowest (GS1 General
 * Specifications 6.6.4); null where it does not fit.
 */
export async function layoutPalletLabel(
  label: PalletLabel,
  dpi: number,
  fonts: FontLibrary,
): Promise<LaidOutPallet | null> {
  const { edge } = thermalStock;
  const isLot = (group: readonly ElementString[]) => group.some(({ ai }) => ai === '10');
  // All in bars; nearer to the edge; the lot in words alone: the SSCC is what the label must carry.
  for (const [side, groups] of [
    [edge.value, label.elements],
    [edge.least, label.elements],
    [edge.value, label.elements.filter(group => !isLot(group))],
  ] as const) {
    const laid = await atEdge(label, groups, side, dpi, fonts);
    if (laid) return { ...laid, withoutBars: label.elements.filter(group => !groups.includes(group)).flat() };
  }
  return null;
}

async function atEdge(
  label: PalletLabel,
  groups: PalletLabel['elements'],
  side: Millimetres,
  dpi: number,
  fonts: FontLibrary,
): Promise<Omit<LaidOutPallet, 'withoutBars'> | null> {
  const { text } = thermalStock;
  const maxWidth = new DotPage('portrait', dpi, fonts).width - 2 * side;
  const contents = await fitElements(groups, 'logistic-unit', dpi, maxWidth);
  const sscc = await fitElements([[{ ai: '00', value: label.sscc }]], 'logistic-unit', dpi, maxWidth);
  if (!contents || !sscc) return null;
  const symbols = [...contents, ...sscc];
  for (let height = text.logistic.largest; height >= text.logistic.least; height -= 0.5) {
    const page = new DotPage('portrait', dpi, fonts);
    if (!compose(label, symbols, page, height)) continue;
    const document = page.document(label.title, label.subject, label.date);
    return { document, format: 'portrait', symbols, edge: side, dataHeight: height };
  }
  return null;
}

/** Free text, data in rows, bars below. @returns whether all of it fits */
function compose(
  { free, elements, sscc, shown }: PalletLabel,
  symbols: readonly PlacedSymbol[],
  page: DotPage,
  height: Millimetres,
): boolean {
  const { edge, text } = thermalStock;
  const { title, least } = text.logistic;
  const x = edge.value + 1;
  const width = page.width - 2 * x;
  const small = text.small.value;
  const words = free.flatMap(line => page.lines(line, 'regular', small, width) ?? [line]);
  const data: ElementString[] = [{ ai: '00', value: sscc }, ...elements.flat()];
  const rows = inRows(data, shown, page, height, width);
  if (!rows) return false;
  const rowHeight = title + 0.6 + height + 1;
  const barsHeight = symbols.reduce((sum, { geometry }) => sum + geometry.height + GAP, 0);
  const used = 2 * edge.value + words.length * small * 1.45 + rows.length * rowHeight + barsHeight + GAP;
  if (used > page.height || height < least) return false;
  let y = edge.value + 0.5;
  for (const line of words) {
    page.text(line, { x, y, height: small, width });
    y += small * 1.45;
  }
  page.rule(x, y, width);
  y += 0.8;
  for (const row of rows) {
    for (const { element, left, room } of row) {
      page.text(dataTitle(element.ai), { x: x + left, y, height: title, width: room });
      page.text(shown(element), { x: x + left, y: y + title + 0.6, height, width: room, face: 'bold' });
    }
    y += rowHeight;
  }
  y = page.height - edge.value - barsHeight + GAP;
  page.rule(x, y - GAP, width);
  for (const { geometry, symbol } of symbols) y = page.symbol(geometry, y, `GS1-128 ${symbol.text}`) + GAP;
  return true;
}

interface Cell {
  readonly element: ElementString;
  readonly left: Millimetres;
  readonly room: Millimetres;
}

/** Values side by side as long as they fit; null where one is wider than the label. */
function inRows(
  data: readonly ElementString[],
  shown: PalletLabel['shown'],
  page: DotPage,
  height: Millimetres,
  width: Millimetres,
): Cell[][] | null {
  const rows: Cell[][] = [];
  let left = 0;
  for (const element of data) {
    const title = page.widthOf(dataTitle(element.ai), 'regular', thermalStock.text.logistic.title);
    const room = Math.max(title, page.widthOf(shown(element), 'bold', height)) + 1e-6;
    if (room > width) return null;
    const row = rows.at(-1);
    if (row && left + room <= width) row.push({ element, left, room });
    else {
      left = 0;
      rows.push([{ element, left, room }]);
    }
    left += room + 4;
  }
  return rows;
}
