import type { PlacedMark } from './placed-marks.ts';

/** Millimetres within which places are the same. */
export const TOLERANCE = 0.005;
export const PRACTICE = 'common practice of label printers';

export const quote = ({ text }: PlacedMark): string => (text === '' ? 'a path' : `"${text.trim()}"`);
export const isText = ({ mark }: PlacedMark): boolean => mark.paints.includes('text');
