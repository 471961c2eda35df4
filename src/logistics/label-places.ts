import data from '../../hazard-data/us-dot/hazard-labels.json' with { type: 'json' };
import type { Millimetres } from '../quantity/length.ts';
import { acrossCorners } from './package-marks.ts';
import type { CaseSize } from './pallet.ts';

const { size: law, place, number, durability } = data;

/** How large hazard labels are and where they stand on a case (49 CFR 172.406, 172.407). */
export interface LabelPlaces {
  /** Of the square on a point, in millimetres. */
  readonly side: Millimetres;
  /** Distance between two opposite corners. */
  readonly across: Millimetres;
  /** Greatest distance of two labels that stand next to each other. */
  readonly together: Millimetres;
  /**
   * `one-side`: a side of the case takes all of them in full size in a row; `more-sides`: a side takes one, not all;
   * `smaller`: no side takes one, so it is reduced or stands on a tag; `size-unknown`.
   */
  readonly room: 'one-side' | 'more-sides' | 'smaller' | 'size-unknown';
  /** On how many sides each label stands: two from 1.8 m³. */
  readonly sides: 1 | 2;
  /** Height of the number of the class. */
  readonly number: { readonly least: Millimetres; readonly most: Millimetres; readonly cite: string };
  /** Days of exposure that a label must stand. */
  readonly weather: { readonly days: number; readonly cite: string };
  readonly cites: {
    readonly size: string;
    readonly reduced: string;
    readonly surface: string;
    readonly together: string;
    readonly tag: string;
    readonly twice: string;
    readonly contrast: string;
  };
}

/**
 * Where the labels of a case go. Any surface but the bottom will do (172.406(a)(1)(i)), so the top counts as well.
 * @param labels how many different ones
 */
export function labelPlaces(size: CaseSize | null, labels: number): LabelPlaces {
  const across = acrossCorners(law.side);
  return {
    side: law.side,
    across,
    together: place.together.millimetres,
    room: roomOn(size, labels, across),
    sides: size !== null && volume(size) >= place.twice.cubicMetres ? 2 : 1,
    number: { least: number.least, most: number.most, cite: number.size },
    weather: { days: durability.days, cite: durability.cite },
    cites: {
      size: law.cite,
      reduced: law.reduced,
      surface: place.surface,
      together: place.together.cite,
      tag: place.small,
      twice: place.twice.cite,
      contrast: place.contrast,
    },
  };
}

const volume = ({ length, width, height }: CaseSize): number => (length * width * height) / 1e9;

function roomOn(size: CaseSize | null, labels: number, across: Millimetres): LabelPlaces['room'] {
  if (size === null) return 'size-unknown';
  const { length, width, height } = size;
  const faces = [
    [length, height],
    [width, height],
    [length, width],
  ] as const;
  const takes = ([a, b]: readonly [number, number], rows: number): boolean =>
    Math.max(a, b) >= rows * across && Math.min(a, b) >= across;
  if (faces.some(face => takes(face, labels))) return 'one-side';
  return faces.some(face => takes(face, 1)) ? 'more-sides' : 'smaller';
}
