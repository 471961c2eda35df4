import type { Millimetres } from '../../quantity/length.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import type { PagedDocument } from '../frame.ts';
import { outlineOf } from '../label/pictogram.ts';
import { DotPage } from './dot-page.ts';
import { thermalStock } from './thermal-stock.ts';

/** What the label of a container in the shop says. */
export interface RawMaterialLabel {
  /** Product identifier. */
  readonly name: string;
  readonly signalWord: string | null;
  /** `GHS05` */
  readonly pictograms: readonly string[];
  readonly statements: readonly string[];
  /** Small lines: what is not known, what counts beside this label. */
  readonly notes: readonly string[];
  /** Captions of lines to write on. */
  readonly byHand: readonly string[];
  readonly foot: string;
}

interface Words {
  readonly title: string;
  readonly subject: string;
  /** ISO 8601 instant. */
  readonly date: string;
}

/** Pictograms of a workplace label are at least so wide across; no rule sets a size. */
const LEAST_FIGURE: Millimetres = 16;
const FRAME: Millimetres = 0.9;

/**
 * Labels of containers that raw materials are poured into (29 CFR 1910.1200(f)(6)(ii)), a page each on 4 x 6 in stock:
 * identifier, pictograms in black, signal word, statements. Names of materials that do not fit are given back.
 */
export function layoutRawMaterials(
  labels: readonly RawMaterialLabel[],
  words: Words,
  dpi: number,
  fonts: FontLibrary,
): { readonly document: PagedDocument; readonly unfit: readonly string[] } | null {
  const unfit: string[] = [];
  const pages = labels.flatMap(label => {
    const page = layoutOne(label, dpi, fonts);
    if (!page) unfit.push(label.name);
    return page ? [page.document(words.title, words.subject, words.date)] : [];
  });
  const [first] = pages;
  if (!first) return null;
  const root = { ...first.root, children: pages.flatMap(({ root: { children } }) => children) };
  return { document: { ...first, frames: pages.flatMap(({ frames }) => frames), root }, unfit };
}

/** The label at the largest share of its sizes at which it fits; null where it fits at none. */
function layoutOne(label: RawMaterialLabel, dpi: number, fonts: FontLibrary): DotPage | null {
  for (let share = 1; share >= -0.01; share -= 0.1) {
    const page = new DotPage('portrait', dpi, fonts);
    if (compose(label, page, share)) return page;
  }
  return null;
}

function compose(label: RawMaterialLabel, page: DotPage, share: number): boolean {
  const { margin, text } = thermalStock;
  const x = margin.value;
  const width = page.width - 2 * x;
  const at = ({ largest, least }: { largest: number; least: number }) => least + (largest - least) * share;
  const [nameHeight, lineHeight, small] = [at(text.name), at(text.line), text.small.value];
  const name = page.lines(label.name, 'bold', nameHeight, width);
  const said = label.statements.map(line => page.lines(line, 'regular', lineHeight, width));
  const notes = label.notes.map(line => page.lines(line, 'regular', small, width));
  if (!name || said.includes(null) || notes.includes(null)) return false;
  let y = x;
  const put = (lines: readonly string[], height: Millimetres, leading: number, face: 'bold' | 'regular') => {
    for (const line of lines) {
      page.text(line, { x, y, height, width, face }, face === 'bold' && lines === name ? 'H1' : 'P');
      y += height * leading;
    }
  };
  put(name, nameHeight, 1.35, 'bold');
  y += 1;
  page.rule(x, y, width);
  y += 2;
  const { pictograms } = label;
  if (pictograms.length > 0) {
    // As wide as goes beside each other, not above 40 mm nor above what the statements leave.
    const gap = 2;
    const most = (width - gap * (pictograms.length - 1)) / pictograms.length;
    const size = Math.max(LEAST_FIGURE, Math.min(most, 22 + 18 * share));
    if (size > most + 1e-9) return false;
    for (const [i, code] of pictograms.entries()) {
      const left = x + i * (size + gap);
      page.figure(outlineOf(code), { x: left, y, size, frame: FRAME, viewBox: 1000 }, code);
    }
    y += size + 3;
  }
  if (label.signalWord) {
    put([label.signalWord.toUpperCase()], nameHeight * 0.9, 1.45, 'bold');
  }
  for (const lines of said) put(lines!, lineHeight, 1.4, 'regular');
  y += 1;
  for (const lines of notes) put(lines!, small, 1.5, 'regular');
  const footHeight = small * 1.6 + 2;
  const writing = 9;
  const bottom = page.height - x - footHeight;
  if (y > bottom - writing - 1) return false;
  const column = width / label.byHand.length;
  for (const [i, caption] of label.byHand.entries()) {
    const left = x + i * column;
    page.text(caption, { x: left, y: bottom - small - 0.5, height: small, width: column - 2 });
    page.rule(left, bottom - small - 1.6, column - 3, 2);
  }
  page.text(label.foot, { x, y: page.height - x - small, height: small, width });
  return true;
}
