import type { Millimetres } from '../../quantity/length.ts';
import { type Box, empty, named, overlay, type Placed } from './box.ts';
import type { Paragraph, Section } from './content.ts';
import type { Measured } from './measured.ts';
import { lineGap, type Passage, passage, type Setting, textBox } from './text-block.ts';

/** A paragraph that flows through columns. */
export interface FlowPart {
  readonly passage: Passage;
  /** More than the gap between lines, where it does not head a column. */
  readonly before: Millimetres;
  /** Does not end a column. */
  readonly keepsWithNext: boolean;
}

/** The flowing sections as paragraphs; the first of each section keeps more distance. */
export function flowOf(sections: readonly Section[], setting: Setting): readonly FlowPart[] {
  const { gap, paragraphGap } = setting.measures;
  return sections.flatMap((section, index) =>
    section.paragraphs.map((paragraph, at): FlowPart => {
      const before = at === 0 ? (index > 0 ? gap : 0) : close(section.paragraphs, at) ? 0 : paragraphGap;
      return {
        passage: passage(paragraph, setting.fonts),
        before,
        keepsWithNext: keeps(section.paragraphs, at),
      };
    }),
  );
}

/** Parts of one group stand close together, and so does what comes after a heading. */
const close = (paragraphs: readonly Paragraph[], at: number): boolean =>
  paragraphs[at]?.follows || paragraphs[at - 1]?.style === 'heading';

/** A heading stays with its text, and the first item of a list with the second. */
function keeps(paragraphs: readonly Paragraph[], at: number): boolean {
  const here = paragraphs[at]!;
  if (here.style === 'heading') return at < paragraphs.length - 1;
  return (
    here.style === 'item' && paragraphs[at - 1]?.style !== 'item' && paragraphs[at + 1]?.style === 'item'
  );
}

/** A place at which a column may end. */
interface Break {
  readonly parts: number;
  readonly height: Millimetres;
  readonly at: number;
  readonly rest: Passage | null;
}

/** Text of one column. */
interface Column {
  readonly parts: readonly Placed[];
  readonly height: Millimetres;
}

const TOLERANCE = 1e-9;

/**
 * Fills columns of given heights in order; null where they do not hold all. A paragraph goes on in another column
 * only where a statement starts.
 */
function fill(
  flow: readonly FlowPart[],
  width: Millimetres,
  limits: readonly Millimetres[],
  setting: Setting,
): readonly Column[] | null {
  const between = lineGap(setting.fonts, setting.measures);
  const columns: Column[] = [];
  let at = 0;
  let rest: Passage | null = null;
  for (const limit of limits) {
    const parts: Placed[] = [];
    let height = 0;
    // Where a heading opens what does not fit any more, the column ends before it.
    let safe: Break = { parts: 0, height: 0, at, rest };
    while (at < flow.length) {
      const part = flow[at]!;
      const now: Passage = rest ?? part.passage;
      const box = boxOf(now, width, setting);
      if (!box) return null;
      const y = parts.length === 0 ? 0 : height + between + part.before;
      if (y + box.height <= limit + TOLERANCE) {
        parts.push({ box, x: 0, y });
        height = y + box.height;
        at += 1;
        rest = null;
        if (!part.keepsWithNext) safe = { parts: parts.length, height, at, rest };
        continue;
      }
      const divided = divide(now, width, limit - y, setting);
      if (divided) {
        parts.push({ box: divided.box, x: 0, y });
        height = y + divided.box.height;
        rest = divided.rest;
        safe = { parts: parts.length, height, at, rest };
      }
      break;
    }
    columns.push({ parts: parts.slice(0, safe.parts), height: safe.height });
    ({ at, rest } = safe);
    if (at >= flow.length) break;
  }
  return at >= flow.length ? columns : null;
}

const boxes = new WeakMap<Setting, Map<Measured, Map<string, Box | null>>>();

/** A passage at a width is set once for the many heights that are tried. */
function boxOf(now: Passage, width: Millimetres, setting: Setting): Box | null {
  const texts = boxes.get(setting) ?? new Map<Measured, Map<string, Box | null>>();
  boxes.set(setting, texts);
  const cache = texts.get(now.text) ?? new Map<string, Box | null>();
  texts.set(now.text, cache);
  const key = `${now.from} ${now.to} ${width}`;
  const known = cache.get(key);
  if (known !== undefined) return known;
  const made = textBox(now, width, setting);
  cache.set(key, made);
  return made;
}

/** The most statements of a passage that fit a height, at least two lines of them, and what remains. */
function divide(
  now: Passage,
  width: Millimetres,
  height: Millimetres,
  setting: Setting,
): { readonly box: Box; readonly rest: Passage } | null {
  const places = now.text.starts.filter(place => place > now.from && place < now.to);
  for (const place of places.reverse()) {
    const box = boxOf({ ...now, to: place }, width, setting);
    if (!box || box.height > height + TOLERANCE) continue;
    return box.height < 2 * setting.measures.em ? null : { box, rest: { ...now, from: place } };
  }
  return null;
}

/** Text set in columns at a pitch. */
export interface Columns {
  readonly box: Box;
  /** Heights of the columns that hold text. */
  readonly heights: readonly Millimetres[];
}

/**
 * Sets text in columns that end at about one height, as low as the limits and the text allow; null where they do not
 * hold it.
 */
export function balancedColumns(
  flow: readonly FlowPart[],
  { width, gutter, limits }: { width: Millimetres; gutter: Millimetres; limits: readonly Millimetres[] },
  setting: Setting,
): Columns | null {
  const most = Math.max(0, ...limits);
  const at = (height: Millimetres) =>
    fill(
      flow,
      width,
      limits.map(limit => Math.min(limit, height)),
      setting,
    );
  let best = at(most);
  if (!best) return null;
  let [low, high] = [0, most];
  for (let step = 0; limits.length > 1 && step < 12; step += 1) {
    const middle = (low + high) / 2;
    const filled = at(middle);
    if (filled) {
      best = filled;
      high = middle;
    } else low = middle;
  }
  const placed = best.map((column, index) => ({
    box: column.height > 0 ? named('text', overlay(column.parts, width, column.height)) : empty,
    x: index * (width + gutter),
    y: 0,
  }));
  const height = Math.max(0, ...best.map(column => column.height));
  const total = limits.length * (width + gutter) - gutter;
  return {
    box: overlay(placed, total, height),
    heights: best.filter(({ parts }) => parts.length > 0).map(column => column.height),
  };
}
