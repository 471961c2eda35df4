import { type Millimetres, MM_PER_INCH } from './length.ts';

/** Units in which people give lengths. */
export type LengthUnit = 'mm' | 'in';

/** A length as people write it, without noise digits: `19.2 mm`, `3.125 in`. To a hundredth of a millimetre or a thousandth of an inch. */
export function lengthText(length: Millimetres, unit: LengthUnit = 'mm'): string {
  return `${lengthNumber(length, unit)} ${unit}`;
}

/** Two lengths with one unit: `101.6 x 76.2 mm`. */
export const sizeText = (width: Millimetres, height: Millimetres, unit: LengthUnit = 'mm'): string =>
  `${lengthNumber(width, unit)} x ${lengthText(height, unit)}`;

const lengthNumber = (length: Millimetres, unit: LengthUnit): string =>
  String(unit === 'in' ? Number((length / MM_PER_INCH).toFixed(3)) : Number(length.toFixed(2)));
