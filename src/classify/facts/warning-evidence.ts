import type { BridgingPrinciple } from '../../record/product-record.ts';

/** Why evidence is not used. */
export type EvidenceFault =
  | { readonly kind: 'earlier-entry' | 'no-route' | 'no-effect' | 'no-reason' | 'cannot-lower' }
  | { readonly kind: 'no-such-class'; readonly basis: string }
  | BridgingFault;

/** Why bridged evidence cannot be used. */
export type BridgingFault =
  | { readonly kind: 'no-principle'; readonly class: string }
  | {
      readonly kind: 'principle-not-for-class';
      readonly principle: BridgingPrinciple;
      readonly class: string;
      /** Principles that hold for the class. */
      readonly others: readonly string[];
    }
  | {
      readonly kind: 'principle-for-category';
      readonly principle: BridgingPrinciple;
      readonly category: string;
    }
  | { readonly kind: 'principle-for-form'; readonly principle: BridgingPrinciple; readonly form: string }
  | {
      readonly kind: 'diluted-too-far';
      readonly class: string;
      readonly total: number;
      readonly least: number;
    };
