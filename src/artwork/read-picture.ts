import { decode } from 'fast-png';
import { inksOfScreen } from '../quantity/screen-color.ts';
import { fail, type Outcome, succeed } from '../report/diagnostic.ts';
import type { PictureArt } from './art.ts';
import { convertedColors } from './read-drawing.ts';

/** Red, green, blue and opacity of each pixel, one byte each. */
interface Pixels {
  readonly columns: number;
  readonly rows: number;
  readonly data: Uint8Array;
}

/** Reads any PNG into bytes of red, green, blue and opacity. */
function pixelsOf(bytes: Uint8Array): Pixels {
  const { width, height, data, depth, channels, palette, transparency } = decode(bytes, { checkCrc: true });
  const out = new Uint8Array(4 * width * height);
  const most = 2 ** depth - 1;
  const perRow = depth < 8 ? Math.ceil((width * channels * depth) / 8) : width * channels;
  const sample = (row: number, at: number): number => {
    if (depth >= 8) return data[row * perRow + at]!;
    const bit = at * depth;
    return (data[row * perRow + (bit >> 3)]! >> (8 - depth - (bit & 7))) & most;
  };
  const scaled = (value: number) => Math.round((value * 255) / most);
  for (let row = 0; row < height; row += 1)
    for (let column = 0; column < width; column += 1) {
      const to = 4 * (row * width + column);
      const at = column * channels;
      const first = sample(row, at);
      if (palette) {
        const entry = palette[first] ?? [0, 0, 0];
        out.set([entry[0]!, entry[1]!, entry[2]!, entry[3] ?? 255], to);
        continue;
      }
      const gray = channels < 3;
      const parts = gray ? [first, first, first] : [first, sample(row, at + 1), sample(row, at + 2)];
      const hidden = transparency && parts.every((part, index) => part === transparency[gray ? 0 : index]);
      const alpha =
        channels === 2 || channels === 4 ? scaled(sample(row, at + channels - 1)) : hidden ? 0 : 255;
      out.set([...parts.map(scaled), alpha], to);
    }
  return { columns: width, rows: height, data: out };
}

/**
 * Reads a PNG: grays stay gray, colors of the screen are converted to process inks with a warning, opacity is kept.
 */
export function readPicture(file: string, bytes: Uint8Array): Outcome<PictureArt> {
  let pixels: Pixels;
  try {
    pixels = pixelsOf(bytes);
  } catch (error) {
    return fail({
      code: 'art-unreadable',
      severity: 'error',
      message: `${file} cannot be read as a PNG: ${(error as Error).message}`,
      hint: 'save the picture again as a PNG',
      at: { file },
    });
  }
  const { columns, rows, data } = pixels;
  const count = columns * rows;
  let [gray, opaque] = [true, true];
  for (let at = 0; at < data.length; at += 4) {
    gray &&= data[at] === data[at + 1] && data[at] === data[at + 2];
    opaque &&= data[at + 3] === 255;
  }
  const samples = new Uint8Array(gray ? count : 4 * count);
  for (let index = 0; index < count; index += 1) {
    const [red, green, blue] = [data[4 * index]!, data[4 * index + 1]!, data[4 * index + 2]!];
    if (gray) samples[index] = red;
    else
      samples.set(
        inksOfScreen([red / 255, green / 255, blue / 255]).map(part => Math.round(part * 2.55)),
        4 * index,
      );
  }
  const alpha = opaque ? null : Uint8Array.from({ length: count }, (_, index) => data[4 * index + 3]!);
  return succeed(
    {
      kind: 'picture',
      file,
      size: null,
      aspect: columns / rows,
      columns,
      rows,
      space: gray ? 'DeviceGray' : 'DeviceCMYK',
      samples,
      alpha,
      source: bytes,
    },
    gray ? [] : [convertedColors(file)],
  );
}
