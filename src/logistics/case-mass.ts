import type Fraction from 'fraction.js';
import { Exact } from '../quantity/exact.ts';
import { readMeasure } from '../quantity/measure.ts';
import type { Pack } from '../record/product-record.ts';

/** A fact that the mass of a case needs and nobody gave. */
export type MassGap = 'density' | 'empty-pack' | 'case-tare';

/** Mass of a case in kilograms; null where a part is not known. */
export interface CaseMass {
  readonly count: number;
  /** Net contents of one pack. */
  readonly contents: number | null;
  /** Net contents of all packs. */
  readonly net: number | null;
  readonly emptyPack: number | null;
  readonly tare: number | null;
  /** All parts; null while one of them is not known. */
  readonly gross: number | null;
  /** The parts that are known: the gross mass is no less. */
  readonly atLeast: number;
  readonly missing: readonly MassGap[];
}

/**
 * Gross mass of a case: contents by volume and density or by mass, empty packs, and the empty case. A part that is not
 * known is never taken for nothing.
 * @param density g/mL, or null
 * @param emptyPack kilograms of one empty pack with its closure, or null
 * @param tare kilograms of the empty case with its inserts, or null
 */
export function caseMass(
  { contents }: Pick<Pack, 'contents'>,
  count: number,
  density: Exact | null,
  emptyPack: Exact | null,
  tare: Exact | null,
): CaseMass {
  const one = contentsOf(contents.written, density);
  const net = one?.mul(count) ?? null;
  const packs = emptyPack?.exact.mul(count) ?? null;
  const missing: MassGap[] = [];
  if (!one) missing.push('density');
  if (!emptyPack) missing.push('empty-pack');
  if (!tare) missing.push('case-tare');
  const known = [net, packs, tare?.exact ?? null].filter(part => part !== null);
  const atLeast = known.reduce((sum, part) => sum.add(part), Exact.decimal(0).exact).valueOf();
  return {
    count,
    contents: one?.valueOf() ?? null,
    net: net?.valueOf() ?? null,
    emptyPack: emptyPack?.value ?? null,
    tare: tare?.value ?? null,
    gross: missing.length === 0 ? atLeast : null,
    atLeast,
    missing,
  };
}

/** Kilograms of the contents. */
function contentsOf(written: string, density: Exact | null): Fraction | null {
  const read = readMeasure(written, 'volume', 'mass');
  if (!read.ok) return null;
  const { base, kind } = read.value;
  if (kind === 'mass') return base.exact.div(1000);
  return density && base.exact.mul(density.exact).div(1000);
}
