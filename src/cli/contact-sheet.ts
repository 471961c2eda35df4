import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ClassifiedProduct } from '../draft/classified-product.ts';
import type { LabelOptions } from '../draft/label-options.ts';
import { LABEL_TARGETS } from '../draft/label-stock.ts';
import { productFor } from '../draft/purposes/product-for.ts';
import { purposeOf } from '../draft/purposes/purposes.ts';
import { tryDraftLabel } from '../draft/try-draft-label.ts';
import type { FrameItem } from '../layout/frame.ts';
import { moved, square } from '../layout/label/pictogram.ts';
import type { RedFrame } from '../layout/stock.ts';
import { svgOf } from '../picture/svg.ts';
import type { Pack } from '../record/product-record.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import { en } from '../words/en/index.ts';

/** Labels of the contact sheet beside those of the records, in millimetres: small, narrow, wide, large, oval, round. */
const DIES: readonly Partial<NonNullable<Pack['label']>>[] = [
  { width: 76.2, height: 101.6, unit: 'in' },
  { width: 60, height: 180 },
  { width: 220, height: 70 },
  { width: 150, height: 250 },
  { width: 150, height: 120, shape: 'oval', cornerRadius: 0 },
  { width: 130, height: 130, cornerRadius: 65 },
];

/** Red frames of the stock for roll printers, at the left under the name, in as many columns as they need. */
const FRAMES = ({ height }: NonNullable<Pack['label']>, count: number) => {
  const step = 22.5;
  const most = Math.max(1, Math.floor((height - 30) / step) + 1);
  return Array.from({ length: count }, (_, at) => ({
    left: 4 + Math.floor(at / most) * step,
    bottom: height - 30 - (at % most) * step,
    side: 15,
  }));
};

/**
 * Pictures of labels in all targets and in many sizes on one page, to be looked at one by one.
 * @returns the path of the page
 */
export async function contactSheet(
  products: readonly ClassifiedProduct[],
  purposes: readonly LabelOptions['purpose'][],
  date: string,
  fonts: FontLibrary,
): Promise<string> {
  const folder = join('out', 'contact-sheet');
  mkdirSync(folder, { recursive: true });
  const shown: string[] = [];
  const add = async (product: ClassifiedProduct, options: LabelOptions, what: string) => {
    const { document, diagnostics } = await tryDraftLabel(product, options, fonts, en);
    const title = `${product.record.name}, ${options.purpose}, ${what}`;
    const [frame] = document?.frames ?? [];
    const told = diagnostics
      .map(({ severity, message }) => `<li>${severity}: ${escaped(message)}</li>`)
      .join('');
    const name = `${String(shown.length + 1).padStart(3, '0')}.svg`;
    const red = (options.pack.label?.redFrames ?? []).map(preprinted(options.pack));
    const whole = frame && { ...frame, items: [...red, ...frame.items] };
    if (whole)
      writeFileSync(join(folder, name), svgOf(whole, fonts, title, '<!-- draft for qualified review -->'));
    const picture = frame
      ? `<img src="${name}" alt="${escaped(title)}" style="width:${frame.width}mm">`
      : '<p>refused</p>';
    shown.push(`<figure>${picture}<figcaption>${escaped(title)}<ul>${told}</ul></figcaption></figure>`);
  };
  for (const product of products)
    for (const purpose of purposes) {
      const [pack] = product.record.packs;
      if (!pack?.label) continue;
      const { label } = pack;
      const judged = await productFor(product, purposeOf(purpose));
      const count = (judged.ok ? judged.value : product).elements.pictograms.length;
      for (const target of LABEL_TARGETS) {
        const framed =
          target === 'press' ? pack : { ...pack, label: { ...label, redFrames: FRAMES(label, count) } };
        await add(product, { pack: framed, purpose, date, target }, target);
      }
      for (const die of DIES) {
        const other = { ...pack, label: { ...label, ...die } };
        // Artwork is of one size.
        const { record } = product;
        const bare = { ...product, record: { ...record, copy: { ...record.copy, artwork: null } } };
        const { width, height, shape } = other.label;
        // A sign has no die of a pack, and straight corners.
        const size = purpose === 'tank' ? { width, height, unit: other.label.unit } : undefined;
        await add(bare, { pack: other, purpose, date, size }, `${width} x ${height} mm ${shape}`);
      }
    }
  const path = join(folder, 'index.html');
  writeFileSync(
    path,
    `<!DOCTYPE html><html lang="en"><meta charset="utf-8"><title>Contact sheet of the demo labels</title>
<style>body{font:14px/1.4 sans-serif;background:#eee}figure{display:inline-block;vertical-align:top;margin:12px}img{background:#fff;box-shadow:0 0 2px #666}figcaption{max-width:120mm}</style>
<h1>Contact sheet of the demo labels</h1><p>Drafts for qualified review; maker and products are invented.</p>
${shown.join('\n')}</html>
`,
  );
  return path;
}

/** A red frame of the stock, which no printer prints, for the picture alone. */
const preprinted =
  ({ label }: Pack) =>
  ({ left, bottom, side }: RedFrame): FrameItem => {
    const half = side / Math.SQRT2;
    const [x, y] = [left + half, (label?.height ?? 0) - bottom - half];
    const outline = [...square(0, half), ...square(0, half - 0.07 * side)];
    return moved(
      { kind: 'path', tag: 'background', segments: outline, fill: 'red', fillRule: 'evenodd' },
      x,
      y,
    );
  };

const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, character => `&#${character.codePointAt(0)};`);
