import { Exact } from '../quantity/exact.ts';
import { compareSum, type Part, sumOf } from '../quantity/sum.ts';
import type { VocCategory, VocData, VocKind } from '../reference/duties/voc-data.ts';

/** How a constituent counts: by the tables, as the record says, or as a fragrance. */
export type CountedAs = VocKind | 'fragrance';

/** What the rules ask of a product. */
export interface VocProduct {
  readonly constituents: readonly {
    readonly name: string;
    readonly cas: string | null;
    readonly water: boolean;
    /** What the record says of it; null where nothing. */
    readonly stated: CountedAs | null;
  }[];
  /** The composition of all that are possible with the greatest weighted sum, in percent by weight. */
  most(weights: readonly number[]): readonly Exact[];
  /** Category of Table 1; `none` where the record says that no category fits, null where it says nothing. */
  readonly category: string | null;
  readonly aerosol: boolean;
  /** Whether consumers or institutions buy it in the United States; null where the record does not say. */
  readonly consumer: boolean | null;
  /** Use solutions that the label asks for, with the share of the product in each. */
  readonly dilutions: readonly { readonly written: string; readonly share: Exact }[];
}

export interface VocTerm {
  readonly name: string;
  readonly percent: number;
}

/** Volatile organic content against its limit (40 CFR 59.203). */
export interface VocFinding {
  /**
   * `above` and `within` against a limit; `open` where constituents without data decide; `no-category` where the record
   * names none, `no-limit` where it says that none fits.
   */
  readonly outcome: 'within' | 'above' | 'open' | 'no-category' | 'no-limit';
  readonly category: VocCategory | null;
  /** Percent by weight, from what is known to count, and with what may. */
  readonly sure: number;
  readonly atMost: number;
  readonly counted: readonly VocTerm[];
  readonly unknown: readonly VocTerm[];
  readonly exempt: readonly VocTerm[];
  readonly low: readonly VocTerm[];
  readonly fragrance: readonly VocTerm[];
  /** The same at the least dilution, to which alone the limit applies where the label asks for it (59.203(b)). */
  readonly diluted: { readonly written: string; readonly sure: number; readonly atMost: number } | null;
}

/**
 * Volatile organic compounds by weight, held against the limit of the product's category (40 CFR 59.203(a)): without
 * exempt compounds (51.100(s)(1)), those of low vapor pressure (59.203(f)) and 2 % of fragrance (59.203(e)). Null
 * where the product is not for households or institutions.
 */
export function volatileContent(product: VocProduct, data: VocData): VocFinding | null {
  if (product.consumer === false) return null;
  const kinds = product.constituents.map(
    ({ cas, water, stated }): CountedAs | null =>
      stated ?? (water ? 'none' : cas === null ? null : data.kind(cas)),
  );
  const weigh = (counts: (kind: CountedAs | null) => boolean) => kinds.map(kind => (counts(kind) ? 1 : 0));
  const counts = (kind: CountedAs | null) => kind === 'voc' || kind === 'fragrance';
  const partsOf = (weights: readonly number[]): readonly Part[] => {
    const composition = product.most(weights);
    const of = (...wanted: readonly (CountedAs | null)[]): Part[] =>
      composition.flatMap((amount, i) =>
        weights[i] && wanted.includes(kinds[i]!) ? [{ amount, weight: 1 }] : [],
      );
    const scent = of('fragrance');
    const free = { amount: Exact.decimal(data.fragrance), weight: -1 };
    return [...of('voc', null), ...(compareSum(scent, data.fragrance) > 0 ? [...scent, free] : [])];
  };
  const mostWeights = weigh(kind => counts(kind) || kind === null);
  const [sureParts, mostParts] = [partsOf(weigh(counts)), partsOf(mostWeights)];
  const [sure, atMost] = [sumOf(sureParts), sumOf(mostParts)];
  const composition = product.most(mostWeights);
  const terms = (wanted: CountedAs | null): VocTerm[] =>
    product.constituents.flatMap(({ name }, i) =>
      kinds[i] === wanted && composition[i]!.value > 0 ? [{ name, percent: composition[i]!.value }] : [],
    );
  const strongest = product.dilutions.reduce<VocProduct['dilutions'][number] | null>(
    (best, each) => (best && best.share.value >= each.share.value ? best : each),
    null,
  );
  const share = strongest?.share.value ?? 1;
  const category = data.categories.find(({ id }) => id === product.category) ?? null;
  const over = strongest && Exact.fraction(strongest.share.exact.inverse());
  const above = (parts: readonly Part[]): boolean =>
    category !== null &&
    compareSum(over ? parts.map(part => ({ ...part, over })) : parts, category.percent) > 0;
  return {
    outcome:
      product.category === 'none'
        ? 'no-limit'
        : category === null
          ? 'no-category'
          : above(sureParts)
            ? 'above'
            : above(mostParts)
              ? 'open'
              : 'within',
    category,
    sure,
    atMost,
    counted: terms('voc'),
    unknown: terms(null),
    exempt: terms('exempt'),
    low: terms('low'),
    fragrance: terms('fragrance'),
    diluted: strongest && { written: strongest.written, sure: sure * share, atMost: atMost * share },
  };
}
