import type { ArtItem, Frame, FrameItem, PathItem, TextItem } from '../layout/frame.ts';
import { toMillimetres } from '../quantity/length.ts';
import type { FaceName, FontLibrary } from '../text/glyph-run.ts';
import { colorOf, onScreen, type PictureLook, seen } from './shown.ts';

const number = (value: number): string => String(Number(value.toFixed(4)));

/** Path data of segments, y downwards. */
export const pathData = (segments: readonly (readonly (string | number)[])[]): string =>
  segments
    .map(([name, ...numbers]) => `${name}${numbers.map(part => number(part as number)).join(' ')}`)
    .join('');

const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, character => `&#${character.codePointAt(0)};`);

/** Artwork as it is seen; nothing for a page of a PDF, which is not drawn here. */
function artOf({ art, x, y, width, height }: ArtItem): string {
  if (art.kind === 'page') return '';
  const place = `x="${number(x)}" y="${number(y)}" width="${number(width)}" height="${number(height)}"`;
  if (art.kind === 'picture')
    return `<image ${place} preserveAspectRatio="none" href="data:image/png;base64,${Buffer.from(art.source).toString('base64')}"/>`;
  const shapes = art.shapes.map(({ matrix, segments, fill, rule, line }) => {
    const stroke = line
      ? ` stroke="${inked(line.inks)}" stroke-width="${line.width}" stroke-linecap="${CAPS[line.cap]}" stroke-linejoin="${JOINS[line.join]}" stroke-miterlimit="${line.miter}" stroke-dasharray="${line.dash.join(' ') || 'none'}" stroke-dashoffset="${line.dashFrom}"`
      : '';
    const evenOdd = rule === 'evenodd' ? ' fill-rule="evenodd"' : '';
    return `<path transform="matrix(${matrix.join(' ')})" fill="${fill ? inked(fill) : 'none'}"${evenOdd}${stroke} d="${pathData(segments)}"/>`;
  });
  return `<svg ${place} viewBox="${art.view.join(' ')}" preserveAspectRatio="none">${shapes.join('')}</svg>`;
}

const CAPS = ['butt', 'round', 'square'] as const;
const JOINS = ['miter', 'round', 'bevel'] as const;
const inked = (inks: readonly number[]): string => onScreen(inks.map(part => 100 * part));

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
  const draw = (item: FrameItem): string => {
    if (item.kind === 'art') return artOf(item);
    return item.kind === 'text' ? text(item) : path(item);
  };
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
