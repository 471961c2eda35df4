import data from '../../../hazard-data/eu-clp/packaging.json' with { type: 'json' };

/** What a package for the general public has beside its label. */
export type SupplyPackaging = 'child-resistant' | 'tactile';

/** Classes for which it is asked; of each the categories that count, absent where all do. */
export interface SupplyPackagingRule {
  readonly what: SupplyPackaging;
  readonly cite: string;
  readonly classes: readonly { readonly class: string; readonly categories?: readonly string[] }[];
  /** Forms of a product that are left out. */
  readonly spared?: readonly string[];
}

/** Rules of CLP Annex II, part 3, with the substances that ask for it from a percent on, by CAS number. */
export const supplyPackagingRules: {
  readonly rules: readonly SupplyPackagingRule[];
  readonly substances: {
    readonly what: SupplyPackaging;
    readonly cite: string;
    readonly from: Readonly<Record<string, number>>;
  };
} = data as {
  rules: SupplyPackagingRule[];
  substances: { what: SupplyPackaging; cite: string; from: Record<string, number> };
};
