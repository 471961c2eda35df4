import sizes from '../../templates/stocks/die-sizes.json' with { type: 'json' };
import { type LengthUnit, lengthText } from '../quantity/length-text.ts';
import { readMeasure } from '../quantity/measure.ts';
import { misreads, type Reading, reads } from '../quantity/reading.ts';
import { across, type Partly } from './_cross.ts';
import { leaf, mapping, millimetres, oneOf } from './_leaf.ts';
import * as z from './_zod.ts';
import { eyeMarkSchema, redFramesSchema } from './print-schema.ts';

/** A side of the die in millimetres, with the unit in which it was written. */
export interface DieSide {
  readonly length: number;
  readonly unit: LengthUnit;
}

const readSide = (text: string): Reading<DieSide> => {
  const measure = readMeasure(text, 'length');
  if (!measure.ok) return measure;
  const unit: LengthUnit = measure.value.unit === 'in' ? 'in' : 'mm';
  const length = measure.value.base.value;
  if (length < sizes.least || length > sizes.most)
    return misreads(
      `\`${text}\` is not the side of a label`,
      `labels have sides of ${lengthText(sizes.least, unit)} to ${lengthText(sizes.most, unit)}`,
    );
  return reads({ length, unit });
};

const side = (example: string, description: string) =>
  leaf(readSide, 'a length with its unit', example, description);

const cornerRadius = leaf(
  text => {
    const length = readMeasure(text.trim() === '0' ? '0 mm' : text, 'length');
    if (!length.ok) return length;
    return length.value.base.value < 0
      ? misreads(`\`${text}\` is not a length`)
      : reads(length.value.base.value);
  },
  'a length with its unit',
  '3 mm',
  'Corner radius of the die, at most half its short side',
);

const panels = leaf(
  text => {
    const count = Number(text);
    return Number.isInteger(count) && count >= 1 && count <= sizes.mostPanels
      ? reads(count)
      : misreads(
          `\`${text}\` is not a number of panels`,
          `write a whole number from 1 to ${sizes.mostPanels}`,
        );
  },
  'a whole number',
  '3',
  'Panels of this size side by side in a fold-out label',
);

const lengthOf = (value: unknown): DieSide | null =>
  typeof value === 'object' && value !== null && 'length' in value ? (value as DieSide) : null;

/** Between two squares set at a point, negative where they overlap; not a number where a side is missing. */
function distance(a: Partial<Box> | undefined, b: Partial<Box> | undefined): number {
  const middle = (box: Partial<Box> | undefined) => {
    const { left = Number.NaN, bottom = Number.NaN, side = Number.NaN } = box ?? {};
    const half = side / Math.SQRT2;
    return [left + half, bottom + half, half] as const;
  };
  const [[x, y, half], [u, v, other]] = [middle(a), middle(b)];
  return Math.abs(x - u) + Math.abs(y - v) - half - other;
}

/** Something at a place of the label. */
interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly side?: number;
  readonly width?: number;
  readonly height?: number;
}

const wholeDie = (
  { width, height, shape, overlap, panels: count, 'corner-radius': radius, ...placed }: Partly,
  complain: (path: (string | number)[], message: string, hint?: string) => void,
): void => {
  const [wide, high] = [lengthOf(width), lengthOf(height)];
  if (!wide || !high) return;
  const { unit } = wide;
  const half = Math.min(wide.length, high.length) / 2;
  if (typeof radius === 'number' && radius > half + 1e-9)
    complain(
      ['corner-radius'],
      `a corner radius of ${lengthText(radius, unit)} is more than half the short side`,
      `give at most ${lengthText(half, unit)}, or \`shape: oval\``,
    );
  const inside = (
    path: (string | number)[],
    value: unknown,
    wider: (box: Box) => readonly [number, number],
  ): void => {
    const box = value as Partial<Box> | null;
    if (typeof box?.left !== 'number' || typeof box.bottom !== 'number') return;
    const [across, up] = wider(box as Box);
    const all = wide.length * (typeof count === 'number' ? count : 1);
    if (box.left + across > all + 1e-9 || box.bottom + up > high.length + 1e-9)
      complain(
        path,
        `${path.length > 1 ? 'the frame' : 'it'} reaches over the edge of the label`,
        'measure from the left and the lower edge',
      );
  };
  const { 'red-frames': frames, 'eye-mark': eyeMark } = placed;
  if (Array.isArray(frames))
    for (const [at, frame] of frames.entries()) {
      inside(['red-frames', at], frame, ({ side = 0 }) => [side * Math.SQRT2, side * Math.SQRT2]);
      const over = frames.slice(0, at).some(other => distance(frame, other) < -1e-6);
      if (over) complain(['red-frames', at], 'the frame lies over another one', 'measure both again');
    }
  inside(['eye-mark'], eyeMark, ({ width: w = 0, height: h = 0 }) => [w, h]);
  if (shape === 'oval' && typeof radius === 'number' && radius > 0)
    complain(['corner-radius'], 'an oval has no corner radius', 'remove `corner-radius`, or `shape`');
  if (shape === 'oval' && typeof count === 'number' && count > 1)
    complain(['panels'], 'an oval does not fold out into panels', 'remove `panels`, or `shape`');
  if (typeof overlap === 'number' && overlap > wide.length / 4)
    complain(
      ['overlap'],
      `an overlap of ${lengthText(overlap, unit)} is more than a quarter of the label`,
      'give the width of the strip that the other end of the label covers',
    );
};

/** The die of the label of one pack. */
export const dieSchema = across(
  mapping(
    {
      width: side('130 mm', 'Width of the label; of one panel where it folds out'),
      height: side('120 mm', 'Height of the label'),
      'corner-radius': z.optional(cornerRadius),
      shape: z.optional(oneOf(['rectangle', 'oval'], 'Shape of the die; an oval of equal sides is round')),
      overlap: z.optional(
        millimetres('8 mm', 'Strip at the right edge of a wrap-around label that its other end covers'),
      ),
      panels: z.optional(panels),
      'red-frames': z.optional(redFramesSchema),
      'eye-mark': z.optional(eyeMarkSchema),
    },
    'The die of the label',
  ),
  wholeDie,
);
