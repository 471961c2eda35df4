import type { Exact } from '../../quantity/exact.ts';
import type { ConsumerKind, ConsumerSignal } from '../../reference/consumer/rules.ts';

/** What the law for consumers needs to know of a product beside its classification. */
export interface ConsumerProduct {
  readonly form: 'liquid' | 'solid' | 'gas' | 'aerosol';
  /** Degrees Celsius; `none` where a test found none, null where the record gives none. */
  readonly flashPoint: { readonly celsius: Exact; readonly cup: 'closed' | 'open' | null } | 'none' | null;
  /** mm2/s at 40 C; null where not measured. */
  readonly viscosity: Exact | null;
  /** Inhalable dusts or mists may occur in use; null where the record does not say. */
  readonly inhalable: boolean | null;
  /** Word that the maker chose where the law leaves it to him (15 U.S.C. 1261(p)(1)(D)). */
  readonly signal?: 'WARNING' | 'CAUTION' | null;
}

/** What a hazard is drawn from. */
export type Origin =
  | { readonly kind: 'class'; readonly code: string; readonly of: string | null }
  | {
      readonly kind: 'dose';
      readonly route: string;
      /** In the hours of the law. */
      readonly value: number;
      readonly limit: number;
      readonly unit: string;
    }
  | { readonly kind: 'flash-point'; readonly fahrenheit: number }
  | { readonly kind: 'composition'; readonly rule: string; readonly percent: number; readonly limit: number };

/** A hazard of the law, proposed or, where composition alone decides, given. */
export interface ConsumerHazard {
  readonly kind: ConsumerKind;
  readonly statement: string;
  /** The words, where they are those of the classification. */
  readonly codes: readonly string[];
  readonly cite: string;
  readonly from: Origin;
  /** Ids of data that would settle it; empty where composition does. */
  readonly settledBy: readonly string[];
  /** Constituents that bring it, by place. */
  readonly constituents: readonly number[];
}

/** A hazard of the classification that this law does not cover, with the reason. */
export interface UncoveredHazard {
  readonly code: string;
  readonly why: string;
  readonly cite: string;
}

/** What may be a hazard of the law and cannot be judged. */
export interface OpenHazard {
  readonly what: 'flash-point' | 'open-cup' | 'class' | 'no-cas' | 'epoxy';
  /** Classes that are open, or the rule that a constituent may bring. */
  readonly of: readonly string[];
  readonly constituents: readonly number[];
  readonly cite: string;
}

/** The label of a product for households: hazards, words and what is left open. */
export interface ConsumerFacts {
  readonly hazards: readonly ConsumerHazard[];
  readonly signal: {
    readonly word: ConsumerSignal;
    readonly cite: string;
    /** The proposal in whose place the maker chose the word. */
    readonly proposed?: ConsumerSignal;
  } | null;
  /** The maker chose a word where the law sets another, or none; null where it did not. */
  readonly refusedSignal: { readonly cite: string; readonly set: ConsumerSignal | null } | null;
  /** The word Poison with skull and crossbones, beside the signal word. */
  readonly poison: string | null;
  /** Ids of statements in the order of the label, those said by others left out. */
  readonly statements: readonly string[];
  /** Prescribed sentences beside the statements of hazard, by id. */
  readonly also: readonly string[];
  /** Constituents that the label names (16 CFR 1500.3(b)(14)(i)(B)). */
  readonly named: readonly number[];
  readonly uncovered: readonly UncoveredHazard[];
  readonly open: readonly OpenHazard[];
}
