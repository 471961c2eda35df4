import type { Millimetres } from '../../quantity/length.ts';

/** What is drawn; millimetres. */
export interface PalletPicture {
  readonly pallet: {
    readonly length: Millimetres;
    readonly width: Millimetres;
    readonly height: Millimetres;
  };
  readonly layer: readonly {
    readonly x: Millimetres;
    readonly y: Millimetres;
    readonly length: Millimetres;
    readonly width: Millimetres;
  }[];
  readonly layers: number;
  readonly caseHeight: Millimetres;
  /** Words of the drawing, in the language of its reader. */
  readonly captions: {
    readonly title: string;
    readonly layer: string;
    readonly side: string;
    readonly length: string;
    readonly width: string;
  };
}

const escaped = (text: string): string =>
  text.replace(/[&<>"]/gu, sign => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign] ?? sign);
const rounded = (value: number): string => String(Math.round(value * 10) / 10);

/** A layer from above and the loaded pallet from its long side, to scale: SVG. Every second layer is turned round. */
export function palletPicture({ pallet, layer, layers, caseHeight, captions }: PalletPicture): string {
  const type = 36;
  const margin = 2 * type;
  const out: string[] = [];
  const text = (x: number, y: number, content: string, more = '') =>
    out.push(
      `<text x="${rounded(x)}" y="${rounded(y)}" font-size="${type}"${more}>${escaped(content)}</text>`,
    );
  const box = (x: number, y: number, width: number, height: number, fill: string) =>
    out.push(
      `<rect x="${rounded(x)}" y="${rounded(y)}" width="${rounded(width)}" height="${rounded(height)}" fill="${fill}" stroke="#333" stroke-width="3"/>`,
    );
  text(margin, margin + type, captions.title, ' font-weight="bold"');
  const top = margin + 3.5 * type;
  box(margin, top, pallet.length, pallet.width, '#d9c7a3');
  for (const { x, y, length, width } of layer) {
    box(margin + x, top + y, length, width, '#efe6d2');
    // The tape runs along the case: which way it lies is seen at once.
    const along = length >= width;
    const line = along
      ? [x, y + width / 2, x + length, y + width / 2]
      : [x + length / 2, y, x + length / 2, y + width];
    out.push(
      `<line x1="${rounded(margin + line[0]!)}" y1="${rounded(top + line[1]!)}" x2="${rounded(margin + line[2]!)}" y2="${rounded(top + line[3]!)}" stroke="#b08d57" stroke-width="8"/>`,
    );
  }
  text(margin, top - type / 2, captions.layer);
  text(margin, top + pallet.width + 1.3 * type, captions.length);
  text(
    0,
    0,
    captions.width,
    ` transform="translate(${rounded(margin + pallet.length + 1.2 * type)} ${rounded(top)}) rotate(90)"`,
  );

  const load = layers * caseHeight;
  const sideTop = top + pallet.width + 4.5 * type;
  text(margin, sideTop - type / 2, captions.side);
  const floor = sideTop + load;
  for (let at = 0; at < layers; at += 1) {
    const y = floor - (at + 1) * caseHeight;
    for (const [from, to] of frontOf(layer, pallet.length, at % 2 === 1))
      box(margin + from, y, to - from, caseHeight, '#efe6d2');
  }
  // Boards above and below, blocks between.
  const board = pallet.height / 6;
  box(margin, floor, pallet.length, board, '#d9c7a3');
  box(margin, floor + pallet.height - board, pallet.length, board, '#d9c7a3');
  const block = pallet.length / 9;
  for (const x of [0, pallet.length / 2 - block / 2, pallet.length - block])
    box(margin + x, floor + board, block, pallet.height - 2 * board, '#c4ad80');
  const height = floor + pallet.height + margin;
  const longest = Math.max(...[captions.title, captions.side].map(({ length }) => length));
  const width = Math.max(pallet.length + 3 * type, longest * type * 0.62) + 2 * margin;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${rounded(width / 8)}mm" height="${rounded(height / 8)}mm" viewBox="0 0 ${rounded(width)} ${rounded(height)}" font-family="sans-serif" role="img" aria-label="${escaped(captions.title)}">`,
    '<rect width="100%" height="100%" fill="#fff"/>',
    ...out,
    '</svg>',
    '',
  ].join('\n');
}

/** The cases that are seen from the long side, from the left; the layer turned by half a turn where asked. */
function frontOf(layer: PalletPicture['layer'], length: Millimetres, turned: boolean): [number, number][] {
  const spans = layer
    .map(({ x, y, length: long, width }) => ({ from: x, to: x + long, near: y + width, far: y }))
    .map(({ from, to, near, far }) =>
      turned ? { from: length - to, to: length - from, depth: -far } : { from, to, depth: near },
    )
    .sort((a, b) => b.depth - a.depth);
  const seen: [number, number][] = [];
  for (const { from, to } of spans)
    if (!seen.some(([a, b]) => from < b - 1e-6 && to > a + 1e-6)) seen.push([from, to]);
  return seen.sort((a, b) => a[0] - b[0]);
}
