import { type Millimetres, toPoints } from '../../quantity/length.ts';
import { type FontLibrary, runWidth } from '../../text/glyph-run.ts';
import { type Outline, outlineOf } from '../die/outline.ts';
import type { FrameItem, Segment } from '../frame.ts';
import type { PressProfile, Stock } from '../stock.ts';
import type { Sheet } from './box.ts';
import type { Section } from './content.ts';

/** The word across the label, the first of the notice. */
const bigWord = (text: string): string => text.split(' ')[0] ?? '';

/**
 * The notice that this is a draft, on a layer of its own: its first word large and pale across the label, under
 * everything, and the whole in the margin above the first block. It takes no room: without it nothing moves.
 * @param notices longer forms that say what is open; the first that has room is taken, else the last.
 */
export function draftMark(
  section: Section,
  notices: readonly string[],
  { die, profile }: Pick<Stock, 'die' | 'profile'>,
  sheet: Sheet,
  fonts: FontLibrary,
): readonly FrameItem[] {
  const [paragraph] = section.paragraphs;
  const own = paragraph?.spans.map(({ text }) => text).join('') ?? '';
  if (!paragraph || own === '') return [];
  const outline = outlineOf(die);
  const forms = notices.length > 0 ? notices : [own];
  const words = forms.find(each => hasRoom(each, outline, profile, sheet, fonts)) ?? forms.at(-1)!;
  const safe = profile.safeZone.value;
  const notice: FrameItem = {
    kind: 'text',
    ...noticePlace(words, outline, profile, sheet, fonts).place,
    run: fonts.shape(words, 'bold'),
    ink: 'black',
    tag: paragraph.tag,
    layer: 'draft',
  };
  // A printer with black alone has nothing pale.
  if (profile.dpi !== undefined) return [notice];
  const across = paleWord(bigWord(own), outline, safe, fonts);
  return across.length === 0
    ? [notice]
    : [{ kind: 'path', tag: 'background', layer: 'draft', segments: across, fill: 'tint' }, notice];
}

/** Millimetres between the notice and the first block, where the margin has them. */
const GAP = 0.4;

function noticePlace(
  words: string,
  outline: Outline,
  { safeZone, xHeight }: PressProfile,
  sheet: Sheet,
  fonts: FontLibrary,
) {
  const em = (xHeight.minimum * 1000) / fonts.metrics('regular').xHeight;
  const size = toPoints(em);
  // The ink itself counts, not the height of capitals: some letters rise above it.
  const heights = fonts
    .outline(words, 'bold')
    .flatMap(([, ...numbers]) => numbers.filter((_, at) => at % 2 === 1));
  const [rise, fall] = [(em * Math.max(...heights)) / 1000, (em * -Math.min(...heights)) / 1000];
  const width = runWidth(fonts.shape(words, 'bold'), size);
  const head = Math.min(outline.die.height, ...sheet.areas.map(({ y }) => y));
  const y = Math.max(safeZone.value + rise, head - fall - GAP);
  // Above the first block, so that readers of the file find it first; centred where that block is a narrow band.
  const block = [...sheet.areas].sort((a, b) => a.y - b.y || a.x - b.x)[0];
  const room = outline.across(y - rise, y + fall, safeZone.value) ?? { from: 0, to: outline.die.width };
  const left = block?.x ?? room.from;
  const wanted = room.from > left ? left + ((block?.width ?? width) - width) / 2 : left;
  const isWithin = width <= room.to - room.from;
  return { place: { x: Math.max(room.from, Math.min(wanted, room.to - width)), y, size }, isWithin };
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
