import type { Found } from '../reference/lists/look-up.ts';
import type { StateListing } from '../reference/regulatory/open-regulatory.ts';
import type { PackagingFinding } from './child-resistant.ts';
import type { StateVocFinding } from './state-voc.ts';
import type { VocFinding } from './voc.ts';

/** What a marketplace or dealer asks for with a product. */
export type ListingItem = 'sheet' | 'sheet-date' | 'transport' | 'flash-point' | 'net-contents' | 'gtin';

/**
 * How a duty stands: `due` asks for something that the record does not show, `met` is shown, `open` lacks data, `free`
 * does not bind.
 */
export type DutyState = 'due' | 'met' | 'open' | 'free';

interface Stands {
  readonly state: DutyState;
  readonly cite: string | null;
}

/** A duty around the label, with what triggered it. */
export type Duty =
  | (Stands & {
      readonly id: 'child-resistant';
      readonly pack: string;
      readonly finding: PackagingFinding;
      readonly packaging: boolean | null;
    })
  /** Constituents without a CAS number may be substances of these paragraphs. */
  | (Stands & {
      readonly id: 'child-resistant-unknown';
      readonly pack: string;
      readonly names: readonly string[];
      readonly rules: number;
      readonly packaging: boolean | null;
    })
  /** Nothing of 16 CFR 1700.14(a) binds a pack; `household` null where the record does not say who buys it. */
  | (Stands & { readonly id: 'child-resistant-none'; readonly household: boolean | null })
  | (Stands & { readonly id: 'voc'; readonly finding: VocFinding; readonly tableSource: string })
  | (Stands & { readonly id: 'voc-none' })
  | (Stands & { readonly id: 'voc-state'; readonly finding: StateVocFinding })
  | (Stands & {
      readonly id: 'state-warning';
      readonly name: string;
      readonly percent: number;
      readonly found: Found<StateListing>;
    })
  | (Stands & {
      readonly id: 'state-warning-none';
      readonly sought: number;
      readonly found: number;
      /** Constituents without a CAS number: their names alone were sought. */
      readonly unknown: readonly string[];
    })
  | (Stands & {
      readonly id: 'listing';
      readonly item: ListingItem;
      readonly pack: string | null;
      readonly value: string | null;
    });
