import sizes from '../../../templates/stocks/die-sizes.json' with { type: 'json' };
import { type Millimetres, MM_PER_INCH } from '../../quantity/length.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import type { Die } from '../die/die.ts';
import type { Stock } from '../stock.ts';
import { fitsAtAll } from './fit.ts';
import { hasSides } from './legal-stock.ts';
import type { Parts } from './parts.ts';

/** Dies that hold a label that does not fit; each has been laid out. Null where none within reach does. */
export interface Remedies {
  /** Least height at the same width. */
  readonly height: Millimetres | null;
  /** Least width at the same height. */
  readonly width: Millimetres | null;
  /** Least number of panels of the same size, side by side in a fold-out label, laid out one by one. */
  readonly panels: number | null;
  /** Where the law asks for more on both sides: a die that has them and holds the label. */
  readonly both: { readonly width: Millimetres; readonly height: Millimetres } | null;
}

/** Labels are not sought beyond so many times the size asked for. */
const REACH = 12;

/** Dies are bought by the millimetre, or by the eighth of an inch; common practice, no source. */
const STEPS = { mm: 1, in: MM_PER_INCH / 8 } as const;

/** The smallest dies that hold the label at its least size. */
export function remedies(parts: Parts, stock: Stock, fonts: FontLibrary): Remedies {
  const { die, unit = 'mm' } = stock;
  const fits = (change: Partial<Die>) => {
    const changed = { ...stock, die: { ...die, ...change } };
    const { width, overlap = 0 } = changed.die;
    if (width - overlap > (parts.type?.seen ?? Number.POSITIVE_INFINITY) + 1e-6) return false;
    return hasSides(changed) && fitsAtAll(parts, changed, fonts);
  };
  const search = (from: Millimetres, accepts: (size: Millimetres) => boolean) =>
    least(from, STEPS[unit], accepts);
  const height = search(die.height, size => fits({ height: size }));
  const width = search(die.width, size => fits({ width: size }));
  const panels = die.shape === 'oval' ? null : panelCount(count => fits(foldOut(die, count)));
  if (height !== null || width !== null || !stock.leastSides) return { height, width, panels, both: null };
  const [short, long] = stock.leastSides;
  const upright = die.height >= die.width;
  // Up to the next size that dies are bought in.
  const whole = (size: Millimetres) => Math.ceil(size / STEPS[unit] - 1e-9) * STEPS[unit];
  const wide = Math.max(die.width, whole(upright ? short : long));
  const high = Math.max(die.height, whole(upright ? long : short));
  const enough = fits({ width: wide, height: high })
    ? high
    : search(high, size => fits({ width: wide, height: size }));
  return { height, width, panels, both: enough === null ? null : { width: wide, height: enough } };
}

/** A fold-out of panels of the size of a die. */
export const foldOut = (die: Die, panels: number): Die => ({ ...die, width: die.width * panels, panels });

/** The least multiple of a step above a length that is accepted. */
function least(
  from: Millimetres,
  step: Millimetres,
  accepts: (size: Millimetres) => boolean,
): Millimetres | null {
  const most = Math.floor(Math.min(from * REACH, sizes.most) / step);
  let low = Math.floor(from / step + 1e-9);
  let high = low;
  do {
    if (high >= most) return null;
    low = high;
    high = Math.min(most, Math.ceil(high * 1.3 + 1));
  } while (!accepts(high * step));
  while (high - low > 1) {
    const middle = Math.round((low + high) / 2);
    if (accepts(middle * step)) high = middle;
    else low = middle;
  }
  return high * step;
}

function panelCount(accepts: (count: number) => boolean): number | null {
  for (let count = 2; count <= sizes.mostPanels; count += 1) if (accepts(count)) return count;
  return null;
}
