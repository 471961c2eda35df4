import type { Frame, FrameItem, PathItem, TextItem } from '../layout/frame.ts';
import { toMillimetres } from '../quantity/length.ts';
import type { FaceName, FontLibrary } from '../text/glyph-run.ts';
import { colorOf, type PictureLook, seen } from './shown.ts';

const number = (value: number): string => String(Number(value.toFixed(4)));

/** Path data of segments, y downwards. */
export const pathData = (segments: readonly (readonly (string | number)[])[]): string =>
  segments
    .map(([name, ...numbers]) => `${name}${numbers.map(part => number(part as number)).join(' ')}`)
    .join('');

const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, character => `&#${character.codePointAt(0)};`);

/**
 * A label as a picture: white ground, the trim alone, letters as outlines of the face, each drawn once and used where
 * it stands. Exact to a ten-thousandth of a millimetre.
 * @param title for readers that do not see it
 * @param comment that the picture carries, as it is written in XML
 */
export function svgOf(
  frame: Frame,
  fonts: FontLibrary,
  title: string,
  comment: string,
  look: PictureLook = {},
): string {
  const { ids = 'g' } = look;
  const glyphs = new Map<string, { readonly id: string; readonly path: string }>();
  const glyph = (number: number, face: FaceName): string => {
    const key = `${face} ${number}`;
    const known = glyphs.get(key);
    if (known) return known.id;
    const id = `${ids}${glyphs.size}`;
    glyphs.set(key, { id, path: pathData(fonts.glyph(number, face)) });
    return id;
  };
  const text = ({ x, y, size, run, ink, rotate }: TextItem): string => {
    const scale = number(toMillimetres(size) / 1000);
    const exact = (toMillimetres(size) / 1000).toPrecision(8);
    const turn = rotate ? ` rotate(${-rotate})` : '';
    let at = 0;
    const uses = run.glyphs.map(({ id, text: character, advance }) => {
      const place = at;
      at += advance;
      return character.trim() === '' ? '' : `<use href="#${glyph(id, run.face)}" x="${number(place)}"/>`;
    });
    const by = scale === '0' ? exact : Number(exact);
    return `<g fill="${colorOf(ink, look)}" transform="translate(${number(x)} ${number(y)})${turn} scale(${by} ${-by})">${uses.join('')}</g>`;
  };
  const path = ({ segments, fill, fillRule, stroke, strokeWidth }: PathItem): string => {
    const rule = fillRule === 'evenodd' ? ' fill-rule="evenodd"' : '';
    const line = stroke
      ? ` stroke="${colorOf(stroke, look)}" stroke-width="${number(strokeWidth ?? 0)}"`
      : '';
    return `<path fill="${fill ? colorOf(fill, look) : 'none'}"${rule}${line} d="${pathData(segments)}"/>`;
  };
  const draw = (item: FrameItem): string => (item.kind === 'text' ? text(item) : path(item));
  const drawn = seen(frame).map(draw).join('\n');
  const [width, height] = [number(frame.width), number(frame.height)];
  const definitions = [...glyphs.values()].map(({ id, path: data }) => `<path id="${id}" d="${data}"/>`);
  return `${comment}
<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img">
<title>${escaped(title)}</title>
<defs>${definitions.join('')}</defs>
<rect width="${width}" height="${height}" fill="#ffffff"/>
${drawn}
</svg>
`;
}
