import type { Millimetres } from '../../quantity/length.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import type { PagedDocument } from '../frame.ts';
import { DotPage } from './dot-page.ts';
import { thermalStock } from './thermal-stock.ts';

/** What a package must bear of its contents (49 CFR 172.301, 172.324). */
export interface ShippingMark {
  /** `UN1791`; null where the limited-quantity mark stands for it. */
  readonly id: string | null;
  /** `RQ, Hypochlorite solutions (sodium hypochlorite)` */
  readonly name: string;
  /** Small lines: consignor, draft notice. */
  readonly small: readonly string[];
  readonly title: string;
  readonly subject: string;
  /** ISO 8601 instant. */
  readonly date: string;
}

/**
 * Identification number and proper shipping name on 4 x 6 in stock on its side; null where they do not fit.
 * @param least height of the characters of the number
 */
export function layoutShippingMark(
  mark: ShippingMark,
  least: Millimetres,
  dpi: number,
  fonts: FontLibrary,
): PagedDocument | null {
  const { margin, text } = thermalStock;
  // Twice the least height is read from farther off; a long name takes the room instead.
  for (const [number, words] of [
    [2 * least, text.line.largest * 2],
    [1.5 * least, text.line.largest * 1.5],
    [least, text.line.largest],
    [least, text.line.least],
  ] as const) {
    const page = new DotPage('landscape', dpi, fonts);
    const width = page.width - 2 * margin.value;
    const name = page.lines(mark.name, 'bold', words, width);
    const small = mark.small.map(line => page.lines(line, 'regular', text.small.value, width));
    if (!name || small.includes(null)) continue;
    // A dot more, so that no rounding takes the number under what the law asks.
    const height = number + page.dot;
    const foot = small.flat().length * text.small.value * 1.5;
    const top = mark.id === null ? 0 : height * 1.5;
    if (2 * margin.value + top + name.length * words * 1.4 + foot > page.height) continue;
    if (mark.id !== null && page.widthOf(mark.id, 'bold', height) > width) continue;
    let y = margin.value + 2;
    const x = margin.value;
    if (mark.id !== null) {
      page.text(mark.id, { x, y, height, width, face: 'bold' }, 'H1');
      y += top;
    }
    for (const line of name) {
      page.text(line, { x, y, height: words, width, face: 'bold' });
      y += words * 1.4;
    }
    y = page.height - margin.value - foot + text.small.value * 0.5;
    for (const line of small.flat()) {
      page.text(line!, { x, y, height: text.small.value, width });
      y += text.small.value * 1.5;
    }
    return page.document(mark.title, mark.subject, mark.date);
  }
  return null;
}
