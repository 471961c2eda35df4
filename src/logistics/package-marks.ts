import data from '../../hazard-data/us-dot/package-marks.json' with { type: 'json' };
import type { Millimetres } from '../quantity/length.ts';
import type { CaseSize } from './pallet.ts';

/** The limited-quantity mark as a case must bear it (49 CFR 172.315(a)). */
export interface LimitedQuantityMark {
  /** Of the square set on a point, outside of the border. */
  readonly side: Millimetres;
  readonly border: Millimetres;
  /** Depth of the black top and bottom, as a share of the height from point to point. */
  readonly blackDepth: number;
  readonly cite: string;
  /** Why the mark is as large as it is: no size of the case is known, a side takes the full mark, or none does. */
  readonly because: 'size-unknown' | 'side-takes-it' | 'no-side-takes-it';
}

const { limitedQuantity, identification, orientation, marinePollutant, consignor } = data;

/** Height of a square set on a point. */
export const acrossCorners = (side: Millimetres): Millimetres => side * Math.SQRT2;

/**
 * The mark of a limited quantity: sides of 100 mm, or less down to 50 mm only where the size of the packaging requires
 * it (49 CFR 172.315(a)(2)). Null where the case takes not even that.
 */
export function limitedQuantityMark(size: CaseSize | null): LimitedQuantityMark | null {
  const { side, reducedSide, border, reducedBorder, blackDepth, cite } = limitedQuantity;
  const mark = (mm: Millimetres, line: Millimetres, because: LimitedQuantityMark['because']) => ({
    side: mm,
    border: line,
    blackDepth: blackDepth.value,
    cite,
    because,
  });
  if (size === null) return mark(side, border, 'size-unknown');
  // The largest square on a point that lies on one of the upright sides.
  const room = Math.min(size.height, Math.max(size.length, size.width)) / Math.SQRT2;
  if (room >= side) return mark(side, border, 'side-takes-it');
  if (room < reducedSide) return null;
  // In proportion, as all features are where no dimension is set, and not under the least border.
  const reduced = Math.floor(room);
  return mark(reduced, Math.max(reducedBorder, (border * reduced) / side), 'no-side-takes-it');
}

/** The most that a package of limited quantities may weigh, in kilograms. */
export const limitedQuantityGross: { readonly kilograms: number; readonly cite: string } =
  limitedQuantity.grossLimit;

/**
 * Least height of the characters of an identification number: 12 mm, and 6 mm up to 30 kg net (49 CFR 172.301(a)(1)).
 * @param net kilograms in the package; null where not known
 */
export const identificationHeight = (net: number | null): Millimetres =>
  net !== null && net <= identification.small.kilograms
    ? identification.small.characters
    : identification.characters;

/** Orientation arrows: their height on a label, where they go, and what frees a package of them (49 CFR 172.312). */
export const orientationMark: {
  readonly height: Millimetres;
  readonly cite: string;
  readonly sides: string;
  readonly exceptions: readonly { readonly id: string; readonly words: string; readonly cite: string }[];
} = {
  height: orientation.arrowHeight.value,
  cite: orientation.cite,
  sides: orientation.sides,
  exceptions: orientation.exceptions,
};

/** The MARINE POLLUTANT mark of a package (49 CFR 172.322), by vessel. */
export interface MarinePollutantMark {
  /** `due`, `open` where the contents are not known, or what frees the package. */
  readonly status: 'due' | 'open' | 'small' | 'limited-quantity';
  readonly cite: string;
  /** Of the square on a point, outside of the border. */
  readonly side: Millimetres;
  readonly border: Millimetres;
  readonly size: string;
  /** The paragraph by which names of the pollutants stand beside the shipping name. */
  readonly names: string;
}

/**
 * Whether a package of a marine pollutant bears the mark: not where it bears that of a limited quantity, nor where each
 * inner packaging holds up to 5 L of a liquid or 5 kg of a solid (49 CFR 172.322(d)).
 * @param inner contents of one inner packaging
 */
export function marinePollutantMark(
  inner: { readonly millilitres: number | null; readonly grams: number | null },
  isSolid: boolean,
  isLimitedQuantity: boolean,
): MarinePollutantMark {
  const { small, size, names, cite, limitedQuantity: byLimited } = marinePollutant;
  const base = { side: size.side, border: size.border, size: size.cite, names };
  if (isLimitedQuantity) return { ...base, status: 'limited-quantity', cite: byLimited };
  const amount = isSolid ? inner.grams : inner.millilitres;
  if (amount === null) return { ...base, status: 'open', cite };
  const most = (isSolid ? small.kilograms : small.litres) * 1000;
  return amount <= most ? { ...base, status: 'small', cite: small.cite } : { ...base, status: 'due', cite };
}

/** The paragraph that asks for name and address of consignor or consignee on a package. */
export const consignorMark: { readonly cite: string } = { cite: consignor.cite };
