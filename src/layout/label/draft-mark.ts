import type { Millimetres } from '../../quantity/length.ts';
import { type FontLibrary, runWidth } from '../../text/glyph-run.ts';
import { type Outline, outlineOf } from '../die/outline.ts';
import type { FrameItem, Segment, TextItem } from '../frame.ts';
import type { Stock } from '../stock.ts';
import { rectangle, type Sheet } from './box.ts';
import type { Section } from './content.ts';
import { extentOf, noticeLines } from './draft-notice.ts';

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

/**
 * The notice that this is a draft, on a layer of its own: its first word large and pale across the label, under
 * everything, and the whole in the margin above the first block, in several lines where the die narrows to an end. It takes no room: without it nothing moves.
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
  const safe = profile.safeZone.value;
  const notice = noticeLines(forms, outline, profile, sheet, fonts).map(
    ({ words, ...place }): TextItem => ({
      kind: 'text',
      ...place,
      run: fonts.shape(words, 'bold'),
      ink: 'black',
      tag: paragraph.tag,
      layer: 'draft',
    }),
  );
  // A printer with black alone has nothing pale.
  if (profile.dpi !== undefined) return { under: [], over: notice };
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
    over: brand || artwork ? [...notice.map(line => ground(line, fonts)), ...notice] : notice,
  };
}

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
