import symbols from '../../../templates/symbols/ghs-symbols.json' with { type: 'json' };
import type { Millimetres } from '../../quantity/length.ts';
import type { FrameItem, Ink, PathItem, Segment } from '../frame.ts';
import { type Box, drawn, moveSegment } from './box.ts';
import type { PictogramFigure } from './content.ts';

const VIEW_BOX = 1000;
const PATHS = new Map(Object.values(symbols.symbols).map(({ code, path }) => [code, path]));
const ARGUMENTS: Readonly<Record<string, number>> = { M: 2, L: 2, C: 6, Z: 0 };

/** Reads an outline of absolute M, L, C and Z commands. @throws RangeError on any other command */
export function readOutline(path: string): readonly Segment[] {
  return [...path.matchAll(/([A-Za-z])([^A-Za-z]*)/g)].flatMap(([, command, rest]) => {
    const count = ARGUMENTS[command!];
    if (count === undefined) throw new RangeError(`outline command ${command}`);
    const numbers = [...rest!.matchAll(/-?\d*\.?\d+/g)].map(([number]) => Number(number));
    if (count === 0) return [['Z'] as const];
    const segments: Segment[] = [];
    for (let at = 0; at < numbers.length; at += count) {
      const name = command === 'M' && at > 0 ? 'L' : command;
      segments.push([name, ...numbers.slice(at, at + count)] as unknown as Segment);
    }
    return segments;
  });
}

const outlines = new Map<string, readonly Segment[]>();

/** The symbol of a pictogram in a square of 1000 a side. @throws RangeError where none is known for the code */
export function outlineOf(code: string): readonly Segment[] {
  const known = outlines.get(code);
  if (known) return known;
  const path = PATHS.get(code);
  // An empty red square at a point is not a pictogram (29 CFR 1910.1200 App. C, C.2.3.1).
  if (path === undefined) throw new RangeError(`no symbol for ${code}`);
  const read = readOutline(path);
  outlines.set(code, read);
  return read;
}

/** A square set at a point: its middle, and the distance of its corners from there. */
export const square = (centre: Millimetres, reach: Millimetres): readonly Segment[] => [
  ['M', centre, centre - reach],
  ['L', centre + reach, centre],
  ['L', centre, centre + reach],
  ['L', centre - reach, centre],
  ['Z'],
];

/** The symbol alone at the upper left corner. @throws RangeError where no symbol is known for the code */
export function symbolOf({ code, tag }: PictogramFigure, size: Millimetres): PathItem {
  const factor = size / VIEW_BOX;
  const segments = outlineOf(code).map(segment =>
    segment.map(part => (typeof part === 'number' ? part * factor : part)),
  ) as unknown as readonly Segment[];
  return { kind: 'path', tag, segments, fill: 'black', fillRule: 'evenodd' };
}

/** A path at another place. */
export const moved = (item: PathItem, dx: Millimetres, dy: Millimetres): PathItem => ({
  ...item,
  segments: item.segments.map(segment => moveSegment(segment, dx, dy)),
});

/** The skull and crossbones by itself (16 CFR 1500.121(b)(5)). */
export const SKULL = 'skull-and-crossbones';

/** The symbol fills the box that a pictogram would take. */
function skullBox(tag: PictogramFigure['tag'], size: Millimetres): Box {
  const segments = outlineOf('GHS06');
  const numbers = segments.flatMap(([, ...rest]) => rest);
  const xs = numbers.filter((_, at) => at % 2 === 0);
  const ys = numbers.filter((_, at) => at % 2 === 1);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const factor = size / Math.max(Math.max(...xs) - left, Math.max(...ys) - top);
  const scaled = segments.map(segment =>
    segment.map((part, at) =>
      typeof part === 'number' ? (part - (at % 2 === 1 ? left : top)) * factor : part,
    ),
  ) as unknown as readonly Segment[];
  return drawn(size, size, () => [
    { kind: 'path', tag, segments: scaled, fill: 'black', fillRule: 'evenodd' },
  ]);
}

/** Width of the frame as part of the size between corners, and its ink: black where a printer has no other. */
export interface FrameStyle {
  readonly part: number;
  readonly ink: Ink;
}

/**
 * A pictogram: a black symbol on white in a red square set at a point (29 CFR 1910.1200 App. C, C.2.3.1).
 * @param size between opposite corners
 * @throws RangeError where no symbol is known for the code
 */
export function pictogramBox(figure: PictogramFigure, size: Millimetres, { part, ink }: FrameStyle): Box {
  if (figure.code === SKULL) return skullBox(figure.tag, size);
  return drawn(size, size, () => {
    const half = size / 2;
    const inner = half - part * size * Math.SQRT2;
    const { tag } = figure;
    const items: FrameItem[] = [
      { kind: 'path', tag, segments: square(half, inner), fill: 'white' },
      {
        kind: 'path',
        tag,
        segments: [...square(half, half), ...square(half, inner)],
        fill: ink,
        fillRule: 'evenodd',
      },
      symbolOf(figure, size),
    ];
    return items;
  });
}
