import type { Millimetres } from '../../quantity/length.ts';
import { type Strip, strip } from './strip.ts';

/** A strip at its place, counted from the top of the text area. */
export interface PlacedStrip {
  readonly strip: Strip;
  readonly y: Millimetres;
}

const TOLERANCE: Millimetres = 1e-6;

/**
 * Fills pages from the top. A break falls before the last strip that may be parted from the one before it; where
 * everything on a page must stay together, before the first that does not fit.
 * @param height of the text area
 */
export function paginate(strips: readonly Strip[], height: Millimetres): readonly (readonly PlacedStrip[])[] {
  const pages: PlacedStrip[][] = [];
  let start = 0;
  while (start < strips.length) {
    const page = fillPage(strips, start, height);
    const next = start + page.length;
    const end = next === strips.length ? next : lastBreak(strips, start, next);
    const kept = page.slice(0, end - start);
    const { repeat } = strips[start]!;
    pages.push(repeat ? [{ strip: repeat, y: 0 }, ...kept] : kept);
    start = end;
  }
  return pages;
}

/** As many strips as fit, at least one. */
function fillPage(strips: readonly Strip[], start: number, height: Millimetres): PlacedStrip[] {
  const placed: PlacedStrip[] = [];
  let y = strips[start]?.repeat?.height ?? 0;
  for (let at = start; at < strips.length; at += 1) {
    const part = strips[at]!;
    const top = at === start ? y : y + part.before;
    if (at > start && top + part.height > height + TOLERANCE) break;
    placed.push({ strip: part, y: top });
    y = top + part.height;
  }
  return placed;
}

function lastBreak(strips: readonly Strip[], start: number, next: number): number {
  for (let at = next; at > start; at -= 1) if (!strips[at - 1]!.keep) return at;
  return next;
}

/**
 * A heading beside the strips that it stands for. The heading is placed with the first strip; what stands beside it
 * is kept together, and room is left where it is the taller.
 */
export function besides(heading: Strip, body: readonly Strip[]): readonly Strip[] {
  let top = 0;
  const parts = body.map((part, at) => {
    top += at === 0 ? 0 : part.before;
    const bottom = top + part.height;
    const result: Strip = {
      ...part,
      items: at === 0 ? [...heading.items, ...part.items] : part.items,
      keep:
        part.keep ||
        (bottom < heading.height && (at < body.length - 1 || bottom < heading.height - TOLERANCE)),
    };
    top = bottom;
    return result;
  });
  const rest = heading.height - top;
  return rest > TOLERANCE ? [...parts, strip(rest)] : parts;
}
