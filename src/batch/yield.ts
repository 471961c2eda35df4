import type { Exact } from '../quantity/exact.ts';
import { readMeasure } from '../quantity/measure.ts';
import type { Pack } from '../record/product-record.ts';

/** What a batch fills of one pack, with nothing lost in tank, hoses and filler. */
export interface PackYield {
  readonly pack: string;
  readonly contents: string;
  /** Whole packs; null where a density is needed and not known. */
  readonly packs: number | null;
  readonly casesOf: number | null;
  /** Whole cases; null where the pack has none. */
  readonly cases: number | null;
  /** Packs over the whole cases. */
  readonly loose: number | null;
}

/**
 * Packs and cases that a batch fills, each pack by itself.
 * @param density of the product in g/mL
 */
export function packYield(grams: Exact, density: Exact | null, pack: Pack): PackYield {
  const read = readMeasure(pack.contents.written, 'volume', 'mass');
  const one = read.ok
    ? read.value.kind === 'mass'
      ? read.value.base.exact
      : density && read.value.base.exact.mul(density.exact)
    : null;
  const packs = one ? grams.exact.div(one).floor().valueOf() : null;
  const count = pack.case?.count ?? null;
  const cases = packs !== null && count !== null ? Math.floor(packs / count) : null;
  return {
    pack: pack.id,
    contents: pack.contents.written,
    packs,
    casesOf: count,
    cases,
    loose: packs !== null && cases !== null && count !== null ? packs - cases * count : null,
  };
}
