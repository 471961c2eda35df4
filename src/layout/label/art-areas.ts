import type { Millimetres } from '../../quantity/length.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import type { FrameItem } from '../frame.ts';
import type { Stock } from '../stock.ts';
import { barCodeBox } from './bar-code-block.ts';
import { orientations } from './bar-code-sizes.ts';
import { type Box, named, type Placed, rectangle } from './box.ts';
import type { Section } from './content.ts';
import { contentsBox } from './contents-box.ts';
import type { Fitted } from './fit.ts';
import { balancedColumns, flowOf } from './flow.ts';
import { identityBlock } from './identity.ts';
import { lotWindow } from './lot-window.ts';
import { type Measures, measuresAt, textSizes } from './measures.ts';
import type { Making, Parts } from './parts.ts';

type ArtArea = NonNullable<Stock['artwork']>['areas'][number];
type Holds = ArtArea['holds'];

/** Text keeps this from the edge of a white area, in millimetres; common practice, no source. */
const PAD: Millimetres = 1;

/** What always stands on white, whatever the record asks. */
const ALWAYS_WHITE: readonly Holds[] = ['regulated', 'bar-code', 'lot'];

/** Whether an area has a white ground. */
export const isWhite = ({ holds, ground }: ArtArea): boolean =>
  ALWAYS_WHITE.includes(holds) || ground === 'white';

/** The die of the regulated text within artwork, and where its upper left corner is; null without artwork. */
export function regulatedStock(
  stock: Stock,
): { readonly stock: Stock; readonly x: Millimetres; readonly y: Millimetres } | null {
  const { artwork, eyeMark: _eye, brand: _brand, logo: _logo, artwork: _art, ...rest } = stock;
  const area = artwork?.areas.find(({ holds }) => holds === 'regulated');
  if (!area) return null;
  const { left: x, bottom, width, height } = area;
  const die = { width, height, cornerRadius: 0 };
  return { stock: { ...rest, die, isArea: true }, x, y: stock.die.height - bottom - height };
}

const sectionFor = (parts: Parts, holds: Holds): Section | undefined => {
  const { identity, contents, lot } = parts.placed;
  if (holds === 'identity') return identity;
  if (holds === 'net-contents') return contents;
  if (holds === 'lot') return lot;
  if (holds === 'bar-code') return parts.placed['bar-code'];
  return holds === 'directions' ? parts.flow.find(({ role }) => role === 'directions') : undefined;
};

/** The parts that the area of the regulated text holds: all that has no area of its own. */
export function regulatedParts(parts: Parts, { artwork }: Stock): Parts {
  const own = new Set((artwork?.areas ?? []).flatMap(({ holds }) => sectionFor(parts, holds) ?? []));
  const bars = artwork?.areas.some(({ holds }) => holds === 'bar-code') ?? false;
  const placed = Object.fromEntries(Object.entries(parts.placed).filter(([, section]) => !own.has(section)));
  return {
    ...parts,
    placed,
    flow: parts.flow.filter(section => !own.has(section)),
    ...(bars && { barCode: null }),
  };
}

/** Parts of the target size of bars that are tried in an area of their own. */
const BARS = [1, 0.95, 0.9, 0.85, 0.8] as const;

interface Inside {
  readonly width: Millimetres;
  readonly height: Millimetres;
}

function blockOf(holds: Holds, inside: Inside, making: Making): Box | null {
  const { parts } = making;
  const section = sectionFor(parts, holds);
  const { width, height } = inside;
  const fits = (box: Box | null) =>
    box && box.height <= height + 1e-6 && box.width <= width + 1e-6 ? box : null;
  if (!section) return null;
  if (holds === 'identity') {
    for (const share of [1, 0.8, 0.65, 0.5, 0.4, 0.3, 0.2, 0.1]) {
      const name = (share * height) / making.measures.em;
      const box = fits(identityBlock(section, width, { ...making, display: { ...making.display, name } }));
      if (box) return box;
    }
    return null;
  }
  if (holds === 'net-contents') {
    const box = fits(contentsBox(section, width, making));
    return box && named('contents', { ...box, width });
  }
  if (holds === 'lot') return fits(lotWindow(making, width));
  const flow = flowOf([section], making);
  return fits(balancedColumns(flow, { width, gutter: 0, limits: [height] }, making)?.box ?? null);
}

/** The bars at the largest size that an area holds with their quiet zones. */
function barsIn(parts: Parts, { width, height }: Inside, fonts: FontLibrary) {
  const { barCode } = parts;
  if (!barCode) return null;
  for (const bars of BARS)
    for (const way of orientations(barCode, bars)) {
      const box = barCodeBox(barCode, way, 0, fonts);
      if (box.width <= width + 1e-6 && box.height <= height + 1e-6) return { box, bars };
    }
  return null;
}

/** What stands in the areas beside that of the regulated text. */
export interface AreaBlocks {
  readonly placed: readonly Placed[];
  /** Part of the target size of bars in an area of their own. */
  readonly bars: number | null;
  /** Areas that do not hold what they are for at the least size. */
  readonly tooSmall: readonly ArtArea[];
  /** Areas for which the label has nothing. */
  readonly idle: readonly ArtArea[];
}

/** Sets every area of its own at the size of the regulated text, or at the largest below it that fits. */
export function areaBlocks(parts: Parts, fitted: Fitted, stock: Stock, fonts: FontLibrary): AreaBlocks {
  const placed: Placed[] = [];
  const [tooSmall, idle]: [ArtArea[], ArtArea[]] = [[], []];
  let bars: number | null = null;
  const most = fitted.measures.xHeight;
  const sizes = textSizes(stock).filter(size => size <= most + 1e-9);
  const steps: readonly Measures[] = [
    fitted.measures,
    ...sizes.reverse().map(size => measuresAt(size, stock.profile, fonts)),
  ];
  for (const area of stock.artwork?.areas ?? []) {
    const { holds, left, bottom, width, height } = area;
    if (holds === 'regulated') continue;
    const [x, y] = [left, stock.die.height - bottom - height];
    if (holds === 'bar-code') {
      const found = barsIn(parts, area, fonts);
      if (found) {
        bars = found.bars;
        placed.push({
          box: found.box,
          x: x + (width - found.box.width) / 2,
          y: y + (height - found.box.height) / 2,
        });
      } else (parts.barCode ? tooSmall : idle).push(area);
      continue;
    }
    if (!sectionFor(parts, holds)) {
      idle.push(area);
      continue;
    }
    const pad = isWhite(area) ? PAD : 0;
    const inside = { width: width - 2 * pad, height: height - 2 * pad };
    const box = steps
      .map(measures =>
        blockOf(holds, inside, {
          parts,
          fonts,
          measures,
          display: fitted.display,
          words: 'black',
          centred: false,
        }),
      )
      .find(made => made !== null);
    if (box) placed.push({ box, x: x + pad, y: y + pad });
    else tooSmall.push(area);
  }
  return { placed, bars, tooSmall, idle };
}

/** The artwork from edge to edge of the bleed, and white where the label prints on it. */
export function artUnder({ artwork, die }: Stock): readonly FrameItem[] {
  if (!artwork) return [];
  const { art, x, y, width, height } = artwork.placed;
  const grounds = artwork.areas.filter(isWhite).map(
    (area): FrameItem => ({
      kind: 'path',
      tag: 'background',
      segments: rectangle(area.left, die.height - area.bottom - area.height, area.width, area.height),
      fill: 'white',
    }),
  );
  return [{ kind: 'art', tag: 'background', x, y, width, height, art }, ...grounds];
}
