import type { Frame } from '../layout/frame.ts';
import { MM_PER_INCH, toMillimetres } from '../quantity/length.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import { drawArt } from './canvas-art.ts';
import { colorOf, type PictureLook, seen } from './shown.ts';
import { pathData } from './svg.ts';

/** Pixels of the longer side that shops on the web ask for at least, common practice, no source. */
const LEAST_SIDE = 1600;
/** Dots per inch, where that is not too few. */
const DPI = 300;

/**
 * A label as a PNG for listings: white ground, sRGB, the trim alone.
 * @returns null where the drawing library, which is an optional peer of this package, is not installed
 */
export async function pngOf(
  frame: Frame,
  fonts: FontLibrary,
  comment: string,
  look: PictureLook = {},
): Promise<Uint8Array | null> {
  const library = await import('@napi-rs/canvas').catch(() => null);
  if (!library) return null;
  const { width, height } = frame;
  const scale = Math.max(DPI / MM_PER_INCH, LEAST_SIDE / Math.max(width, height));
  const canvas = library.createCanvas(Math.round(width * scale), Math.round(height * scale));
  const context = canvas.getContext('2d');
  context.fillStyle = '#ffffff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.setTransform(scale, 0, 0, scale, 0, 0);
  for (const item of seen(frame)) {
    context.save();
    if (item.kind === 'art') await drawArt(library, context, item);
    else if (item.kind === 'text') {
      const em = toMillimetres(item.size) / 1000;
      context.translate(item.x, item.y);
      context.rotate((-(item.rotate ?? 0) * Math.PI) / 180);
      context.scale(em, -em);
      context.fillStyle = colorOf(item.ink, look);
      for (const { id, advance } of item.run.glyphs) {
        context.fill(new library.Path2D(pathData(fonts.glyph(id, item.run.face))));
        context.translate(advance, 0);
      }
    } else {
      const path = new library.Path2D(pathData(item.segments));
      if (item.fill) {
        context.fillStyle = colorOf(item.fill, look);
        context.fill(path, item.fillRule ?? 'nonzero');
      }
      if (item.stroke) {
        context.strokeStyle = colorOf(item.stroke, look);
        context.lineWidth = item.strokeWidth ?? 0;
        context.stroke(path);
      }
    }
    context.restore();
  }
  return withChunks(await canvas.encode('png'), scale, comment);
}

/** Adds resolution and a comment to a PNG, whose color space the library gives, after its header (PNG Specification, 3rd edition, 11.3). */
function withChunks(png: Uint8Array, perMillimetre: number, comment: string): Uint8Array {
  const header = 8 + 25;
  const density = new Uint8Array(9);
  const view = new DataView(density.buffer);
  const perMetre = Math.round(perMillimetre * 1000);
  view.setUint32(0, perMetre);
  view.setUint32(4, perMetre);
  density[8] = 1;
  const chunks = [chunk('pHYs', density), chunk('tEXt', new TextEncoder().encode(`Comment\0${comment}`))];
  const parts = [png.subarray(0, header), ...chunks, png.subarray(header)];
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

function chunk(name: string, data: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(12 + data.length);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, data.length);
  bytes.set(new TextEncoder().encode(name), 4);
  bytes.set(data, 8);
  view.setUint32(8 + data.length, checksum(bytes.subarray(4, 8 + data.length)));
  return bytes;
}

/** Cyclic redundancy check of PNG, 5.5 and annex D: polynomial 0xedb88320, bits reversed. */
function checksum(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit += 1) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
  }
  return (sum ^ 0xffffffff) >>> 0;
}
