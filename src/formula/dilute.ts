import Fraction from 'fraction.js';
import { Exact } from '../quantity/exact.ts';
import type { Composition, Constituent, Formula } from './constituent.ts';
import { WATER_CAS } from './water.ts';

const hundred = new Fraction(100);

/**
 * A formula thinned with water.
 * @param share part by weight of the solution that is the product, above 0 and up to 1.
 */
export function dilute({ constituents, ranged, most, chosen }: Formula, share: Fraction): Formula {
  const added = hundred.sub(share.mul(hundred));
  const place = constituents.findIndex(({ water }) => water);
  const thinned = (percent: Exact, i: number): Exact =>
    Exact.fraction(percent.exact.mul(share).add(i === place ? added : 0));
  const rest = place < 0 ? [Exact.fraction(added)] : [];
  const over = (composition: Composition): Composition => [...composition.map(thinned), ...rest];
  const water: Constituent = {
    name: 'water',
    cas: WATER_CAS,
    low: Exact.fraction(added),
    high: Exact.fraction(added),
    given: { unknown: [], additive: true, relevant: false, source: null },
    via: [],
    water: true,
  };
  return {
    constituents: [
      ...constituents.map((each, i) => ({ ...each, low: thinned(each.low, i), high: thinned(each.high, i) })),
      ...(place < 0 ? [water] : []),
    ],
    ranged,
    most: weights => over(most(constituents.map((_, i) => weights[i] ?? 0))),
    ...(chosen && { chosen: chosen.map(over) }),
  };
}
