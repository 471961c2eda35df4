import Fraction from 'fraction.js';
import { Exact } from '../quantity/exact.ts';
import type { ProductRecord } from '../record/product-record.ts';
import { basisOf, batchAmount, lineAmount } from './_amounts.ts';
import { lineName } from './_findings.ts';
import { planOf } from './_plan.ts';
import { isWater, waterDensity } from './water.ts';

/** What is weighed or metered into a batch for one line of the formula. */
export interface WeighedLine {
  readonly name: string;
  /** Percent by weight of the batch: both ends of a range. */
  readonly low: Exact;
  readonly high: Exact;
  /** Grams in the batch: both ends of a range. */
  readonly lowGrams: Exact;
  readonly highGrams: Exact;
  /** g/mL; null where none is known and only a weight can be told. */
  readonly density: Exact | null;
}

/** A batch, line by line. */
export interface WeighOut {
  /** Grams of the whole batch. */
  readonly grams: Exact;
  /** The record gives no size of batch: the amounts are for 100 kg. */
  readonly assumed: boolean;
  readonly lines: readonly WeighedLine[];
}

const assumedGrams = new Fraction(100_000);
const hundred = new Fraction(100);
const zero = new Fraction(0);

/**
 * What to weigh out, by the lines of the formula and not by constituents. The batch is that of the record, or the sum of
 * its amounts, or 100 kg.
 * @returns null for a gas, and where the lines do not determine 100 %.
 */
export function weighOut(record: ProductRecord): WeighOut | null {
  if (basisOf(record.form) !== 'weight') return null;
  const { plan } = planOf(record, 'weight', []);
  const at = (end: 'low' | 'high') =>
    plan.lines.map(({ share }) =>
      share.kind === 'range' ? share[end] : share.kind === 'fixed' ? share.percent : zero,
    );
  const sum = (parts: readonly Fraction[]) => parts.reduce((total, part) => total.add(part), zero);
  const [low, high] = [at('low'), at('high')];
  const rest = (end: readonly Fraction[]) => {
    const left = hundred.sub(sum(end));
    return left.lt(0) ? zero : left;
  };
  const known = batchGrams(record);
  const grams = known ?? assumedGrams;
  const lines = plan.lines.map(({ line, share }, index): WeighedLine => {
    const [from, to] =
      share.kind === 'rest'
        ? [rest(high).mul(share.part), rest(low).mul(share.part)]
        : [low[index]!, high[index]!];
    const inGrams = (percent: Fraction) => Exact.fraction(grams.mul(percent).div(hundred));
    return {
      name: lineName(line),
      low: Exact.fraction(from),
      high: Exact.fraction(to),
      lowGrams: inGrams(from),
      highGrams: inGrams(to),
      density:
        line.density ?? (line.kind === 'substance' && isWater(line.name, line.cas) ? waterDensity : null),
    };
  });
  return { grams: Exact.fraction(grams), assumed: known === null, lines };
}

function batchGrams({ batch, formula, properties }: ProductRecord): Fraction | null {
  if (batch) return batchAmount(batch, properties.density?.value.exact ?? null, 'weight');
  let total = zero;
  for (const line of formula) {
    if (line.amount.kind !== 'mass' && line.amount.kind !== 'volume') return null;
    const amount = lineAmount(line, 'weight');
    if (!(amount instanceof Fraction)) return null;
    total = total.add(amount);
  }
  return total.gt(0) ? total : null;
}
