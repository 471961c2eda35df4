import { type Millimetres, toMillimetres } from '../../quantity/length.ts';
import { runWidth } from '../../text/glyph-run.ts';
import type { FrameItem } from '../frame.ts';
import type { Stock } from '../stock.ts';
import type { Area, Sheet } from './box.ts';

type Place = Omit<Area, 'role'>;

/** Between the words of the head and the logo, in millimetres; common practice, no source. */
export const LOGO_GAP: Millimetres = 3;

/** Largest rectangle of a shape in another, at its right edge and in the middle of its height. */
function within({ x, y, width, height }: Place, aspect: number, most: Millimetres): Place {
  const wide = Math.min(width, height * aspect, most);
  const high = wide / aspect;
  return { x: x + width - wide, y: y + (height - high) / 2, width: wide, height: high };
}

/**
 * The logo of the maker: in the place that the record keeps for it beside the name, or in what the name leaves free
 * of its own block, so that it takes no room from the text. Null where that is less than a logo needs.
 * @param sheet as drawn; an area with the role `logo` is the place that was kept
 */
export function logoItem(sheet: Sheet, { logo }: Stock): FrameItem | null {
  if (!logo) return null;
  const kept = sheet.areas.find(({ role }) => role === 'logo');
  const place = kept ?? freeBeside(sheet);
  if (!place) return null;
  const box = within(place, logo.art.aspect, logo.most ?? Number.POSITIVE_INFINITY);
  if (!kept && Math.min(box.width, box.height) < logo.least) return null;
  return { kind: 'art', tag: 'background', art: logo.art, ...box };
}

/** Part of an em that letters rise above their base line. */
const RISE = 0.75;

/** The largest place in the block of the name right of its lines, or of the first of them. */
function freeBeside({ areas, items }: Sheet): Place | null {
  const head = areas.find(({ role }) => role === 'identity');
  if (!head) return null;
  const lines = items
    .flatMap(item => {
      const isInside =
        item.kind === 'text' &&
        item.y >= head.y &&
        item.y <= head.y + head.height + 1e-6 &&
        item.x >= head.x - 1e-6 &&
        item.x < head.x + head.width;
      if (!isInside) return [];
      return [
        { top: item.y - RISE * toMillimetres(item.size), right: item.x + runWidth(item.run, item.size) },
      ];
    })
    .sort((one, other) => one.top - other.top);
  let best: Place | null = null;
  let right = head.x;
  for (const [at, line] of lines.entries()) {
    right = Math.max(right, line.right);
    const bottom = lines[at + 1]?.top ?? head.y + head.height;
    const place = {
      x: right + LOGO_GAP,
      y: head.y,
      width: head.x + head.width - right - LOGO_GAP,
      height: bottom - head.y,
    };
    const isLarger = Math.min(place.width, place.height) > Math.min(best?.width ?? 0, best?.height ?? 0);
    if (isLarger) best = place;
  }
  return best;
}
