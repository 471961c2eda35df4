import { dilute } from '../formula/dilute.ts';
import { isWater, waterDensity } from '../formula/water.ts';
import type { Properties } from '../record/product-record.ts';
import type { Dilution } from '../record/record-blocks.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { type ClassifiedProduct, classifyProduct } from './classified-product.ts';
import type { Product } from './open-product.ts';
import type { Reference } from './open-reference.ts';

/** Of what was measured on the concentrate, what water cannot change: it gives no flash point to what has none. */
const heldByWater = ({ flashPoint }: Properties): Properties => ({
  ...(flashPoint?.value.kind === 'none' && { flashPoint }),
  other: {},
});

/** What the user holds after dilution, classified like a product. */
export interface UseSolution {
  /** Packs whose content is so diluted. */
  readonly packs: readonly string[];
  readonly dilution: Dilution;
  readonly solution: ClassifiedProduct;
}

/**
 * The use solutions of a product's packs, each classified from its ingredients: hazards of foreseeable use (29 CFR
 * 1910.1200(d)(1)(ii)). Parts are by volume, so the density of the product is needed; what was measured or tested on the
 * concentrate does not hold for the solution and is left out.
 * @param asked further dilutions, of no pack.
 * @returns findings for those that cannot be reckoned.
 */
export function useSolutions(
  { record, formula, sources }: Product,
  reference: Reference,
  asked: readonly Dilution[] = [],
): { readonly solutions: readonly UseSolution[]; readonly findings: readonly Diagnostic[] } {
  const findings: Diagnostic[] = [];
  const found = new Map<string, { packs: string[]; dilution: Dilution }>();
  for (const { id, dilutions = [] } of record.packs)
    for (const dilution of dilutions) {
      const key = `${dilution.with} ${dilution.written} ${dilution.use ?? ''}`;
      const known = found.get(key);
      if (known) known.packs.push(id);
      else found.set(key, { packs: [id], dilution });
    }
  for (const dilution of asked) {
    const key = `${dilution.with} ${dilution.written} ${dilution.use ?? ''}`;
    if (!found.has(key)) found.set(key, { packs: [], dilution });
  }
  const density = record.properties.density?.value;
  const solutions = [...found.values()].flatMap(({ packs, dilution }): UseSolution[] => {
    const { at } = dilution;
    const warn = (message: string, hint: string) => {
      findings.push({ code: 'use-solution', severity: 'warning', message, hint, at });
      return [];
    };
    if (!isWater(dilution.with, null))
      return warn(
        `the use solution in ${dilution.with} is not classified: only water is known as a diluent`,
        'make a record of its own for that mixture',
      );
    if (!density)
      return warn(
        `the use solution ${dilution.written} is not classified: parts by volume need the density of the product`,
        'add `density` under `properties`',
      );
    const product = dilution.product.exact.mul(density.exact);
    const share = product.div(product.add(dilution.diluent.exact.mul(waterDensity.exact)));
    const diluted: Product = {
      record: { ...record, form: 'liquid', properties: heldByWater(record.properties), evidence: [] },
      formula: dilute(formula, share),
      sources,
    };
    return [{ packs, dilution, solution: classifyProduct(diluted, reference) }];
  });
  return { solutions, findings };
}
