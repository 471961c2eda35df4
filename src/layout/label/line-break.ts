import type { Word } from './measured.ts';

/** Width of the lines in thousandths of the em. */
export interface Measure {
  readonly width: number;
  readonly firstIndent: number;
  readonly indent: number;
}

const TOLERANCE = 1e-6;

/** Weight of the space left over on a last line, which may be short but not lonely. */
const LAST = 0.15;

/** Number of lines that the words from `from` to `to` need; null where a word is wider than a line. */
export function lineCount(
  words: readonly Word[],
  from: number,
  to: number,
  { width, firstIndent, indent }: Measure,
): number | null {
  let lines = 0;
  let at = from;
  while (at < to) {
    const room = width - (lines === 0 ? firstIndent : indent) + TOLERANCE;
    let used = words[at]!.width;
    if (used > room) return null;
    let end = at + 1;
    while (end < to && !words[end - 1]!.mandatory) {
      const next = used + words[end - 1]!.gap + words[end]!.width;
      if (next > room) break;
      used = next;
      end += 1;
    }
    lines += 1;
    at = end;
  }
  return lines;
}

interface Best {
  readonly lines: number;
  readonly cost: number;
  readonly start: number;
}

/**
 * Ends of the lines, so that there are as few as can be and, among those, the squares of the space left over have
 * the least sum; a last line counts for little. Null where a word is wider than a line.
 */
export function breakEvenly(
  words: readonly Word[],
  from: number,
  to: number,
  { width, firstIndent, indent }: Measure,
): readonly number[] | null {
  const best = new Map<number, Best>([[from, { lines: 0, cost: 0, start: from }]]);
  for (let end = from + 1; end <= to; end += 1) {
    const final = end === to || words[end - 1]!.mandatory;
    let used = 0;
    let found: Best | null = null;
    for (let start = end - 1; start >= from; start -= 1) {
      if (start < end - 1 && words[start]!.mandatory) break;
      used += words[start]!.width + (start < end - 1 ? words[start]!.gap : 0);
      const room = width - (start === from ? firstIndent : indent);
      if (used > width - Math.min(firstIndent, indent) + TOLERANCE) break;
      const before = best.get(start);
      if (used > room + TOLERANCE || !before) continue;
      const left = (room - used) / width;
      const cost = before.cost + left * left * (final ? LAST : 1);
      const lines = before.lines + 1;
      if (!found || lines < found.lines || (lines === found.lines && cost < found.cost))
        found = { lines, cost, start };
    }
    if (found) best.set(end, found);
  }
  if (!best.has(to)) return null;
  const ends: number[] = [];
  for (let end = to; end > from; end = best.get(end)!.start) ends.unshift(end);
  return ends;
}
