import type { Extent, Point } from './_shapes.ts';
import type { PlacedMark } from './placed-marks.ts';

/** Places are held against each other to this, in millimetres. */
export const TOLERANCE = 0.005;

/** What stands there, for findings. */
export const quote = ({ text }: PlacedMark): string => (text === '' ? 'a path' : `"${text.trim()}"`);

/** Corners of an extent. */
export const cornersOf = ([left, bottom, right, top]: Extent): readonly Point[] => [
  [left, bottom],
  [right, bottom],
  [right, top],
  [left, top],
];

export const PRACTICE = 'common practice of label printers';

export const isText = ({ mark }: PlacedMark): boolean => mark.paints.includes('text');
