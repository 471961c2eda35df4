import type { Frame, FrameItem, Tag } from '../../src/layout/frame.ts';

const mm = (value: number): string => (Math.round(value * 100) / 100 + 0).toFixed(2);

const tagName = ({ tag }: FrameItem): string => (typeof tag === 'string' ? tag : tag.type);

/** Every run of text with its place in millimetres and its size in points. */
export const textRuns = ({ width, height, bleed, slug, items }: Frame): string =>
  [
    `frame ${mm(width)} x ${mm(height)} mm, bleed ${mm(bleed)}, slug ${mm(slug)}`,
    ...items.flatMap(item => {
      if (item.kind !== 'text') return [];
      const { x, y, size, run, ink, rotate } = item;
      const more = `${run.face === 'regular' ? '' : ` ${run.face}`}${ink === 'black' ? '' : ` ${ink}`}${rotate ? ` rotated ${rotate}` : ''}`;
      return [`${mm(x)} ${mm(y)} ${mm(size)}${more} <${tagName(item)}> ${run.text}`];
    }),
  ].join('\n');

/** How many items a frame holds of each layer, kind, ink and tag, and the extent of its paths. */
export function summary({ items }: Frame): string {
  const counts = new Map<string, { count: number; box: [number, number, number, number] }>();
  for (const item of items) {
    const inks =
      item.kind === 'text'
        ? item.ink
        : item.kind === 'art'
          ? item.art.kind
          : `${item.fill ?? '-'}/${item.stroke ?? '-'}`;
    const key = `${item.layer ?? 'artwork'} ${item.kind} ${inks} <${tagName(item)}>`;
    const entry = counts.get(key) ?? { count: 0, box: [Infinity, Infinity, -Infinity, -Infinity] };
    entry.count += 1;
    const points = item.kind !== 'path' ? [[item.x, item.y]] : item.segments.flatMap(pointsOf);
    for (const [x, y] of points as [number, number][]) {
      entry.box = [
        Math.min(entry.box[0], x),
        Math.min(entry.box[1], y),
        Math.max(entry.box[2], x),
        Math.max(entry.box[3], y),
      ];
    }
    counts.set(key, entry);
  }
  return [...counts]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, { count, box }]) => `${String(count).padStart(5)} ${key} within ${box.map(mm).join(' ')}`)
    .join('\n');
}

const pointsOf = ([, ...values]: readonly [string, ...number[]]): [number, number][] => {
  const points: [number, number][] = [];
  for (let i = 0; i < values.length; i += 2) points.push([values[i]!, values[i + 1]!]);
  return points;
};

/** The tags of a document as an indented tree, with the text of each. */
export function tagTree(root: Tag, frames: readonly Frame[]): string {
  const texts = new Map<Tag, string[]>();
  for (const { items } of frames)
    for (const { tag, ...item } of items)
      if (item.kind === 'text' && typeof tag !== 'string')
        texts.set(tag, [...(texts.get(tag) ?? []), item.run.text]);
  const lines: string[] = [];
  const walk = (tag: Tag, depth: number): void => {
    const { type, alt, lang, scope, colSpan, children } = tag;
    const more = Object.entries({ alt, lang, scope, colSpan })
      .filter(([, value]) => value !== undefined)
      .map(([name, value]) => ` ${name}=${value}`)
      .join('');
    const text = texts.get(tag)?.join('|');
    lines.push(`${'  '.repeat(depth)}${type}${more}${text ? `: ${text}` : ''}`);
    for (const child of children) walk(child, depth + 1);
  };
  walk(root, 0);
  return lines.join('\n');
}
