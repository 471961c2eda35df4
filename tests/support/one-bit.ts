import { createCanvas } from '@napi-rs/canvas';
import { renderPage } from './render.ts';

/** A page as the dots of a printer with one ribbon; true is black, rows from the top. */
export interface Dots {
  readonly width: number;
  readonly height: number;
  at(x: number, y: number): boolean;
}

/** Renders a page and takes every dot that is more than half covered for black. */
export async function oneBit(bytes: Uint8Array, dpi: number, page = 1): Promise<Dots> {
  const canvas = await renderPage(bytes, page, dpi);
  const { data } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
  const { width, height } = canvas;
  const black = new Uint8Array(width * height);
  for (let at = 0; at < black.length; at += 1) black[at] = data[at * 4]! < 128 ? 1 : 0;
  return { width, height, at: (x, y) => black[y * width + x] === 1 };
}

/** Lengths of the runs of a row of dots, white first, black and white in turn. */
export function runsOfRow(dots: Dots, y: number, from = 0, to = dots.width): number[] {
  const runs: number[] = [];
  let [colour, length] = [false, 0];
  for (let x = from; x < to; x += 1) {
    if (dots.at(x, y) === colour) length += 1;
    else {
      runs.push(length);
      [colour, length] = [!colour, 1];
    }
  }
  return [...runs, length];
}

/** The dots as a canvas of pure black and white, for a decoder; each dot as a square of so many pixels. */
export function canvasOf(dots: Dots, scale = 2) {
  const [width, height] = [dots.width * scale, dots.height * scale];
  const canvas = createCanvas(width, height);
  const context = canvas.getContext('2d');
  const image = context.createImageData(width, height);
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const value = dots.at(Math.floor(x / scale), Math.floor(y / scale)) ? 0 : 255;
      image.data.fill(value, (y * width + x) * 4, (y * width + x) * 4 + 3);
      image.data[(y * width + x) * 4 + 3] = 255;
    }
  context.putImageData(image, 0, 0);
  return canvas;
}
