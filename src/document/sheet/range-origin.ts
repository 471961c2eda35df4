import type { FormulaLine, ProductRecord } from '../../record/product-record.ts';

/** Whose range a concentration is: the supplier's data, or the maker's own formula. */
export type RangeOrigin = 'supplier' | 'maker';

const isRange = ({ amount }: FormulaLine): boolean =>
  amount.kind === 'percent' && amount.low.value < amount.high.value;

/** Origins of the range of a constituent, named by its CAS number or name; empty where only a balance makes it. */
export function rangeOrigins(
  { formula }: Pick<ProductRecord, 'formula'>,
  { name, cas }: { readonly name: string; readonly cas: string | null },
): ReadonlySet<RangeOrigin> {
  const found = new Set<RangeOrigin>();
  const visit = (lines: readonly FormulaLine[], above: readonly RangeOrigin[], depth: number): void => {
    for (const line of lines) {
      const own = isRange(line) ? [...above, depth > 0 ? ('supplier' as const) : ('maker' as const)] : above;
      if (line.kind === 'raw-material') visit(line.material.formula, own, depth + 1);
      else if (cas === null ? line.name === name : line.cas === cas) for (const each of own) found.add(each);
    }
  };
  visit(formula, [], 0);
  return found;
}
