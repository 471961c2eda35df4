import { PDFBool, type PDFObject, PDFRawStream } from 'pdf-lib';
import { type PressSpace, pressSpace } from './_color-space.ts';
import type { Matrix } from './_matrix.ts';
import { asName, asNumber, decoded, entry, members } from './_objects.ts';

/** A picture of pixels as it is placed. */
export interface PlacedImage {
  readonly columns: number;
  readonly rows: number;
  /** Pixels per inch along the side where they are fewest. */
  readonly dpi: number;
  /** A stencil has no color of its own. */
  readonly space: PressSpace | null;
  readonly transparent: boolean;
  /** Most ink on one place, percent; null where it was not measured. */
  readonly ink: number | null;
  /** Compressed as JPEG. */
  readonly jpeg: boolean;
  /** What PDF/X-4 does not allow of it. */
  readonly forbidden: readonly string[];
}

/** Reads an image XObject in a unit square that a matrix places in points (ISO 32000-1 8.9). */
export function placedImage(
  image: PDFObject,
  [a, b, c, d]: Matrix,
  resources: PDFObject | undefined,
): PlacedImage {
  const [columns, rows] = ['Width', 'Height'].map(key => asNumber(entry(image, key)) ?? 0) as [
    number,
    number,
  ];
  const [wide, high] = [Math.hypot(a, b), Math.hypot(c, d)];
  const mask = entry(image, 'ImageMask');
  const stencil = mask instanceof PDFBool && mask.asBoolean();
  const space = stencil ? null : pressSpace(entry(image, 'ColorSpace'), resources);
  const filters = members(entry(image, 'Filter')).map(asName);
  return {
    columns,
    rows,
    dpi: 72 * Math.min(wide > 0 ? columns / wide : Infinity, high > 0 ? rows / high : Infinity),
    space,
    transparent: entry(image, 'SMask') !== undefined || (asNumber(entry(image, 'SMaskInData')) ?? 0) > 0,
    ink: space === null ? 0 : inkOfImage(image, space, filters),
    jpeg: filters.some(name => name === 'DCTDecode'),
    forbidden: [
      ...(entry(image, 'Alternates') ? ['alternate images'] : []),
      ...(entry(image, 'OPI') ? ['pictures that are put in later (OPI)'] : []),
      ...(filters.includes('LZWDecode') ? ['LZW compression'] : []),
    ],
  };
}

/** Only whole bytes without prediction are read: the rest is said to be unmeasured. */
function inkOfImage(
  image: PDFObject,
  space: PressSpace,
  filters: readonly (string | undefined)[],
): number | null {
  if (space.kind === 'gray') return 100;
  const plain =
    space.kind === 'cmyk' &&
    !space.indexed &&
    asNumber(entry(image, 'BitsPerComponent')) === 8 &&
    entry(image, 'Decode') === undefined &&
    filters.every(name => name === 'FlateDecode') &&
    members(entry(image, 'DecodeParms')).every(parms => (asNumber(entry(parms, 'Predictor')) ?? 1) === 1);
  const bytes = plain && image instanceof PDFRawStream ? decoded(image) : undefined;
  return bytes ? mostInk(bytes) : null;
}

/** Most ink of a pixel of four parts of a byte each, percent. */
export function mostInk(samples: Uint8Array): number {
  let most = 0;
  for (let at = 0; at + 3 < samples.length; at += 4) {
    const sum = samples[at]! + samples[at + 1]! + samples[at + 2]! + samples[at + 3]!;
    if (sum > most) most = sum;
  }
  return (most / 255) * 100;
}
