import { type Millimetres, type Points, toMillimetres, toPoints } from '../../quantity/length.ts';
import { type FontLibrary, type GlyphRun, runWidth } from '../../text/glyph-run.ts';
import { type Outline, outlineOf } from '../die/outline.ts';
import type { FrameItem, Segment, TextItem } from '../frame.ts';
import type { PressProfile, Stock } from '../stock.ts';
import { rectangle, type Sheet } from './box.ts';
import type { Section } from './content.ts';

/** The word across the label, the first of the notice. */
const bigWord = (text: string): string => text.split(' ')[0] ?? '';

/** What says that a label is a draft, under and over the grounds of the label. */
export interface DraftMark {
  readonly under: readonly FrameItem[];
  readonly over: readonly FrameItem[];
}

/** A white tab as large as the notice, on which it can be read over any color. */
function ground({ x, y, size, run }: TextItem, fonts: FontLibrary): FrameItem {
  const { rise, fall } = extentOf(run, size, fonts);
  const segments = rectangle(x, y - rise, runWidth(run, size), rise + fall);
  return { kind: 'path', tag: 'background', layer: 'draft', segments, fill: 'white' };
}

/** How far the ink of a run reaches above and below its base line: some letters rise above capitals. */
function extentOf(run: GlyphRun, size: Points, fonts: FontLibrary) {
  const heights = fonts
    .outline(run.text, run.face)
    .flatMap(([, ...numbers]) => numbers.filter((_, at) => at % 2 === 1));
  const em = toMillimetres(size) / 1000;
  return { rise: em * Math.max(...heights), fall: em * -Math.min(...heights) };
}

/**
 * The notice that this is a draft, on a layer of its own: its first word large and pale across the label, under
 * everything, and the whole in the margin above the first block. It takes no room: without it nothing moves.
 * @param notices longer forms that say what is open; the first that has room is taken, else the last.
 */
export function draftMark(
  section: Section,
  notices: readonly string[],
  { die, profile, brand, artwork }: Pick<Stock, 'die' | 'profile' | 'brand' | 'artwork'>,
  sheet: Sheet,
  fonts: FontLibrary,
): DraftMark {
  const [paragraph] = section.paragraphs;
  const own = paragraph?.spans.map(({ text }) => text).join('') ?? '';
  if (!paragraph || own === '') return { under: [], over: [] };
  const outline = outlineOf(die);
  const forms = notices.length > 0 ? notices : [own];
  const words = forms.find(each => hasRoom(each, outline, profile, sheet, fonts)) ?? forms.at(-1)!;
  const safe = profile.safeZone.value;
  const notice: TextItem = {
    kind: 'text',
    ...noticePlace(words, outline, profile, sheet, fonts).place,
    run: fonts.shape(words, 'bold'),
    ink: 'black',
    tag: paragraph.tag,
    layer: 'draft',
  };
  // A printer with black alone has nothing pale.
  if (profile.dpi !== undefined) return { under: [], over: [notice] };
  const across = paleWord(bigWord(own), outline, safe, fonts);
  const under: FrameItem = {
    kind: 'path',
    tag: 'background',
    layer: 'draft',
    segments: across,
    fill: 'tint',
  };
  return {
    under: across.length === 0 ? [] : [under],
    over: brand || artwork ? [ground(notice, fonts), notice] : [notice],
  };
}

/** A rounded corner takes less than this part of the width; what takes more is a die without straight sides. */
const CORNER = 0.06;

/** Millimetres between the notice and the first block, where the margin has them. */
const GAP = 0.9;

function noticePlace(
  words: string,
  outline: Outline,
  { safeZone, xHeight }: PressProfile,
  sheet: Sheet,
  fonts: FontLibrary,
) {
  const em = (xHeight.minimum * 1000) / fonts.metrics('regular').xHeight;
  const size = toPoints(em);
  const run = fonts.shape(words, 'bold');
  const { rise, fall } = extentOf(run, size, fonts);
  const width = runWidth(run, size);
  const head = Math.min(outline.die.height, ...sheet.areas.map(({ y }) => y), ...inkTops(sheet, fonts));
  const y = Math.max(safeZone.value + rise, head - fall - GAP);
  // Above the first block, so that readers of the file find it first; centred where that block is a narrow band.
  const block = [...sheet.areas].sort((a, b) => a.y - b.y || a.x - b.x)[0];
  const room = outline.across(y - rise, y + fall, safeZone.value) ?? { from: 0, to: outline.die.width };
  const left = block?.x ?? room.from;
  const wanted =
    room.from > left + CORNER * outline.die.width ? left + ((block?.width ?? width) - width) / 2 : left;
  const isWithin = width <= room.to - room.from;
  return { place: { x: Math.max(room.from, Math.min(wanted, room.to - width)), y, size }, isWithin };
}

/** Upper edges of the ink of the first lines: tall letters of a name may rise above its block. */
function inkTops({ items }: Sheet, fonts: FontLibrary): readonly Millimetres[] {
  const lines = items.flatMap(item => (item.kind === 'text' && !item.rotate ? [item] : []));
  const first = Math.min(...lines.map(({ y, size }) => y - toMillimetres(size)));
  return lines
    .filter(({ y, size }) => y - 1.5 * toMillimetres(size) < first)
    .map(({ y, run, size }) => y - extentOf(run, size, fonts).rise);
}

const hasRoom = (...notice: Parameters<typeof noticePlace>): boolean => noticePlace(...notice).isWithin;

/** Share of the room that the pale word takes. */
const SHARE = 0.97;

/** The outlines of a word along the rising diagonal, as large as the die allows. */
function paleWord(word: string, outline: Outline, safe: Millimetres, fonts: FontLibrary): readonly Segment[] {
  const { width, height } = outline.die;
  const angle = Math.atan2(height, width) * 0.9;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const { advance } = fonts.shape(word, 'bold');
  const { capHeight } = fonts.metrics('bold');
  const inside = (em: Millimetres): boolean =>
    [-1, 1].every(along =>
      [-1, 1].every(up => {
        const [x, y] = [(along * advance * em) / 2000, (up * capHeight * em) / 2000];
        const place = height / 2 - x * sin - y * cos;
        const room = outline.across(Math.max(0, place), Math.max(0, place), safe);
        const at = width / 2 + x * cos - y * sin;
        return room !== null && at > room.from && at < room.to;
      }),
    );
  let [low, high] = [0, Math.hypot(width, height)];
  for (let step = 0; step < 24; step += 1) {
    const middle = (low + high) / 2;
    if (inside(middle)) low = middle;
    else high = middle;
  }
  const em = low * SHARE;
  if (em <= 0) return [];
  const point = (x: number, y: number): [number, number] => {
    const [along, up] = [((x - advance / 2) * em) / 1000, ((y - capHeight / 2) * em) / 1000];
    return [width / 2 + along * cos - up * sin, height / 2 - along * sin - up * cos];
  };
  return fonts.outline(word, 'bold').map(([name, ...numbers]) => {
    const places: number[] = [];
    for (let at = 0; at < numbers.length; at += 2) places.push(...point(numbers[at]!, numbers[at + 1]!));
    return [name, ...places] as unknown as Segment;
  });
}
