import type { Millimetres } from '../quantity/length.ts';

/** One case on a layer; the origin is a corner of the pallet. */
export interface Placed {
  readonly x: Millimetres;
  readonly y: Millimetres;
  /** Along the length of the pallet. */
  readonly length: Millimetres;
  readonly width: Millimetres;
}

/** A block of cases that all lie the same way. */
interface Block {
  readonly x: Millimetres;
  readonly y: Millimetres;
  readonly columns: number;
  readonly rows: number;
  readonly length: Millimetres;
  readonly width: Millimetres;
}

const EDGE = 1e-6;
const fits = (room: Millimetres, size: Millimetres): number => Math.max(0, Math.floor(room / size + EDGE));

const overlap = (a: Block, b: Block): boolean =>
  a.columns * a.rows > 0 &&
  b.columns * b.rows > 0 &&
  a.x + a.columns * a.length > b.x + EDGE &&
  b.x + b.columns * b.length > a.x + EDGE &&
  a.y + a.rows * a.width > b.y + EDGE &&
  b.y + b.rows * b.width > a.y + EDGE;

/**
 * The most cases on one layer without overhang, as four blocks round the corners, neighbours turned (the four-block
 * heuristic of H. Steudel, 1979, from memory); columns and bricks are its simple forms. Where counts are equal, fewer
 * blocks win.
 */
export function bestLayer(
  pallet: { readonly length: Millimetres; readonly width: Millimetres },
  box: { readonly length: Millimetres; readonly width: Millimetres },
): Placed[] {
  let best: readonly Block[] = [];
  let most = 0;
  for (const [length, width] of [
    [box.length, box.width],
    [box.width, box.length],
  ] as const)
    for (const blocks of fourBlocks(pallet, length, width)) {
      const count = blocks.reduce((sum, { columns, rows }) => sum + columns * rows, 0);
      const simpler = count === most && blocks.length < best.length;
      if (count > most || simpler) [most, best] = [count, blocks];
    }
  return centred(
    best.flatMap(({ x, y, columns, rows, length, width }) =>
      Array.from({ length: columns * rows }, (_, at) => ({
        x: x + (at % columns) * length,
        y: y + Math.floor(at / columns) * width,
        length,
        width,
      })),
    ),
    pallet,
  );
}

/** The layer in the middle of the pallet, so that the load stands over its centre. */
function centred(
  placed: readonly Placed[],
  pallet: { readonly length: Millimetres; readonly width: Millimetres },
): Placed[] {
  const shift = (from: readonly number[], to: readonly number[], room: number) =>
    (room - Math.max(...to) - Math.min(...from)) / 2;
  if (placed.length === 0) return [];
  const dx = shift(
    placed.map(({ x }) => x),
    placed.map(({ x, length }) => x + length),
    pallet.length,
  );
  const dy = shift(
    placed.map(({ y }) => y),
    placed.map(({ y, width }) => y + width),
    pallet.width,
  );
  return placed.map(each => ({ ...each, x: each.x + dx, y: each.y + dy }));
}

/** Every arrangement of blocks at the corners, first and third lying along, second and fourth across. */
function* fourBlocks(
  { length: L, width: W }: { readonly length: Millimetres; readonly width: Millimetres },
  length: Millimetres,
  width: Millimetres,
): Generator<readonly Block[]> {
  const along = { length, width };
  const across = { length: width, width: length };
  for (let n1 = 0; n1 <= fits(L, length); n1 += 1)
    for (let m1 = n1 === 0 ? 0 : 1; m1 <= (n1 === 0 ? 0 : fits(W, width)); m1 += 1)
      for (let n3 = 0; n3 <= fits(L, length); n3 += 1)
        for (let m3 = n3 === 0 ? 0 : 1; m3 <= (n3 === 0 ? 0 : fits(W, width)); m3 += 1) {
          const first = { x: 0, y: 0, columns: n1, rows: m1, ...along };
          const third = { x: L - n3 * length, y: W - m3 * width, columns: n3, rows: m3, ...along };
          const columns2 = fits(L - n1 * length, width);
          const second = {
            x: L - columns2 * width,
            y: 0,
            columns: columns2,
            rows: fits(W - m3 * width, length),
            ...across,
          };
          const rows4 = fits(W - m1 * width, length);
          const fourth = {
            x: 0,
            y: W - rows4 * length,
            columns: fits(L - n3 * length, width),
            rows: rows4,
            ...across,
          };
          const blocks = [first, second, third, fourth].filter(({ columns, rows }) => columns * rows > 0);
          const clear = blocks.every((a, at) => blocks.slice(at + 1).every(b => !overlap(a, b)));
          if (clear) yield blocks;
          // Where second and fourth are in each other's way, either may stand alone.
          else if (!overlap(first, third))
            for (const left of [second, fourth]) {
              const three = blocks.filter(block => block !== left);
              if (three.every((a, at) => three.slice(at + 1).every(b => !overlap(a, b)))) yield three;
            }
        }
}
