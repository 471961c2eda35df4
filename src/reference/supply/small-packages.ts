import data from '../../../hazard-data/eu-clp/small-packages.json' with { type: 'json' };

/** What need not stand on a small package for classes of hazards. */
export interface SmallPackageRule {
  readonly id: string;
  readonly leaves: readonly ('signs' | 'hazard' | 'precautionary')[];
  /** `publicToo` false: not where the mixture is supplied to the general public. */
  readonly categories: readonly { readonly code: string; readonly publicToo: boolean }[];
  readonly why: string;
  readonly cite: string;
}

/** The rules of CLP Annex I, 1.5.2.1. */
export const smallPackageRules = data.rules as readonly SmallPackageRule[];

/** The most that a package may hold for them, in litres, and their paragraph. */
export const smallPackage = { litres: data.most.value / 1000, cite: data.most.cite };

/** Paragraphs on an inner package that bears the least. */
export const innerPackageCite: string = data.inner.cite;
