import { type Millimetres, type Points, toMillimetres, toPoints } from '../../quantity/length.ts';
import { type FontLibrary, type GlyphRun, runWidth } from '../../text/glyph-run.ts';
import type { Outline } from '../die/outline.ts';
import type { PressProfile } from '../stock.ts';
import type { Sheet } from './box.ts';

/** A line of the notice that this is a draft, and where it begins. */
export interface NoticeLine {
  readonly words: string;
  readonly x: Millimetres;
  readonly y: Millimetres;
  readonly size: Points;
}

/** How far the ink of a run reaches above and below its base line: some letters rise above capitals. */
export function extentOf(run: GlyphRun, size: Points, fonts: FontLibrary) {
  const heights = fonts
    .outline(run.text, run.face)
    .flatMap(([, ...numbers]) => numbers.filter((_, at) => at % 2 === 1));
  const em = toMillimetres(size) / 1000;
  return { rise: em * Math.max(...heights), fall: em * -Math.min(...heights) };
}

/** A rounded corner takes less than this part of the width; what takes more is a die without straight sides. */
const CORNER = 0.06;

/** Millimetres between the notice and the first block, where the margin has them. */
const GAP = 0.9;

/** Lines of a notice that stand on each other, in millimetres from base line to base line over the least type. */
const LEADING = 1.2;

/** The place above the first block, and the measures of the type that is set there. */
interface Margin {
  readonly outline: Outline;
  readonly safe: Millimetres;
  readonly size: Points;
  readonly first: Sheet['areas'][number] | undefined;
  /** Base line that is clear of the first block; the safe distance may leave none. */
  readonly base: Millimetres;
  readonly fonts: FontLibrary;
}

const runOf = (words: string, { fonts }: Margin): GlyphRun => fonts.shape(words, 'bold');
const widthOf = (words: string, margin: Margin): Millimetres => runWidth(runOf(words, margin), margin.size);

/**
 * The notice in the margin above the first block, so that readers of the file find it first: the first form that has room
 * on one line; else the last form, in lines that grow shorter where the die narrows to an end.
 */
export function noticeLines(
  forms: readonly string[],
  outline: Outline,
  { safeZone, xHeight }: PressProfile,
  sheet: Sheet,
  fonts: FontLibrary,
): readonly NoticeLine[] {
  const size = toPoints((xHeight.minimum * 1000) / fonts.metrics('regular').xHeight);
  const [first] = [...sheet.areas].sort((a, b) => a.y - b.y || a.x - b.x);
  const head = Math.min(outline.die.height, ...sheet.areas.map(({ y }) => y), ...inkTops(sheet, fonts));
  const margin: Margin = { outline, safe: safeZone.value, size, first, base: head - GAP, fonts };
  for (const words of forms) {
    const line = onOneLine(words, margin);
    if (line) return [line];
  }
  const last = forms.at(-1)!;
  return stacked(last, margin) ?? [anyhow(last, margin)];
}

/** Null where the die is too narrow there. Centred where the first block is a narrow band. */
function onOneLine(words: string, margin: Margin): NoticeLine | null {
  const { outline, safe, size, first, base, fonts } = margin;
  const { rise, fall } = extentOf(runOf(words, margin), size, fonts);
  const width = widthOf(words, margin);
  const y = Math.max(safe + rise, base - fall);
  const room = outline.across(y - rise, y + fall, safe);
  if (!room || width > room.to - room.from) return null;
  const left = first?.x ?? room.from;
  const wanted =
    room.from > left + CORNER * outline.die.width ? left + ((first?.width ?? width) - width) / 2 : left;
  return { words, x: Math.max(room.from, Math.min(wanted, room.to - width)), y, size };
}

/** From the lowest line up, each as long as the die is wide there; null where it ends before the notice does. */
function stacked(words: string, margin: Margin): readonly NoticeLine[] | null {
  const { outline, safe, size, base, fonts } = margin;
  const { rise, fall } = extentOf(runOf(words, margin), size, fonts);
  const lines: NoticeLine[] = [];
  let rest = words.split(' ');
  for (let y = base - fall; rest.length > 0; y -= LEADING * (rise + fall)) {
    const room = y - rise < safe ? null : outline.across(y - rise, y + fall, safe);
    if (!room) return null;
    const width = room.to - room.from;
    let from = rest.length;
    while (from > 0 && widthOf(rest.slice(from - 1).join(' '), margin) <= width) from -= 1;
    if (from === rest.length) return null;
    const line = rest.slice(from).join(' ');
    lines.unshift({ words: line, x: room.from + (width - widthOf(line, margin)) / 2, y, size });
    rest = rest.slice(0, from);
  }
  return lines;
}

/** Where nothing else is left; preflight tells what it meets. */
function anyhow(words: string, margin: Margin): NoticeLine {
  const { outline, safe, size, base, fonts } = margin;
  const { rise, fall } = extentOf(runOf(words, margin), size, fonts);
  const x = Math.max(0, (outline.die.width - widthOf(words, margin)) / 2);
  return { words, x, y: Math.max(safe + rise, base - fall), size };
}

/** Upper edges of the ink of the first lines: tall letters of a name may rise above its block. */
function inkTops({ items }: Sheet, fonts: FontLibrary): readonly Millimetres[] {
  const lines = items.flatMap(item => (item.kind === 'text' && !item.rotate ? [item] : []));
  const first = Math.min(...lines.map(({ y, size }) => y - toMillimetres(size)));
  return lines
    .filter(({ y, size }) => y - 1.5 * toMillimetres(size) < first)
    .map(({ y, run, size }) => y - extentOf(run, size, fonts).rise);
}
