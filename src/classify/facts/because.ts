import type { Exact } from '../../quantity/exact.ts';
import type { BridgingPrinciple } from '../../record/product-record.ts';
import type { AcuteKey } from '../../reference/thresholds.ts';
import type {
  AerosolBecause,
  FlashPointBecause,
  FormBecause,
  OxygenBecause,
  PeroxideDataBecause,
  ScreeningBecause,
  SignsBecause,
  SubstanceBecause,
} from './physical.ts';
import type { Measurement, ReasonBase, Term } from './reason-base.ts';

/**
 * Why a class was given or not, as facts. Constituents are named by their place in the list of constituents, so that
 * whoever prints a reason decides how they are called.
 */
export type Because =
  | SumBecause
  | RatiosBecause
  | IngredientsBecause
  | NoneBecause
  | AdditivityBecause
  | SharedCategoryBecause
  | NothingCountsBecause
  | PhBecause
  | FlashPointBecause
  | TestBecause
  | BridgingBecause
  | FormBecause
  | SubstanceBecause
  | SignsBecause
  | ScreeningBecause
  | OxygenBecause
  | PeroxideDataBecause
  | AerosolBecause
  | ConcludedBecause
  | NotYetBecause
  | ElicitorsBecause
  | SheetReasonsBecause
  | ClassesBecause;

/** Rules that add up concentrations. */
export type SumRule =
  | 'corrosive'
  | 'corrosive-and-irritant'
  | 'irritant-mild'
  | 'corrosive-and-damaging'
  | 'damaging-and-irritating'
  | 'respiratory-irritation'
  | 'narcotic-effects'
  | 'aspiration'
  | 'aquatic'
  | 'pyrophoric-gases'
  | SharesRule;

/** Sums of CLP Annex II. */
export type SharesRule =
  | 'lead'
  | 'cyanoacrylates'
  | 'chromium-in-cement'
  | 'cement'
  | 'isocyanates'
  | 'epoxy-listed'
  | 'epoxy'
  | 'active-chlorine'
  | 'cadmium'
  | 'highly-flammable-beside-halogenated'
  | 'flammable-beside-halogenated'
  | 'titanium-dioxide'
  | 'releases-gas'
  | 'toxic-by-eye-contact'
  | 'dries-skin'
  | 'corrosive-to-respiratory-tract'
  | 'has-statement';

/** A weighted sum of percents against a limit. */
export interface SumBecause extends ReasonBase {
  readonly kind: 'sum';
  readonly rule: SumRule;
  readonly terms: readonly Term[];
  readonly total: number;
  /** Percent. */
  readonly limit: number;
  readonly operator: '>=' | '>';
  readonly reached: boolean;
  /** Category to which was summed, where the rule has several. */
  readonly category?: string;
  /** Which gas or statement the law names, for sums of CLP Annex II. */
  readonly code?: string;
  /** Second condition of an aspiration hazard. */
  readonly viscosity?: ViscosityFact;
}

export interface ViscosityFact {
  /** mm2/s at 40 C; null where the record gives none. */
  readonly measured: Measurement | null;
  readonly limit: number;
  /** Whether it is at or under the limit. */
  readonly reached: boolean;
}

/** A sum of ratios, each concentration over a limit of its own, against 1. */
export interface RatiosBecause extends ReasonBase {
  readonly kind: 'ratios';
  readonly rule: SumRule;
  readonly terms: readonly (Term & { readonly over: Exact })[];
  readonly total: number;
  readonly reached: boolean;
  readonly category?: string;
}

/** One constituent against one limit. */
export interface Comparison {
  readonly constituent: number;
  readonly amount: Exact;
  readonly limit: Exact;
  readonly reached: boolean;
  /** Category of the constituent; empty where the class has none, null where the rule does not ask. */
  readonly own: string | null;
  /** Category that the mixture takes. */
  readonly result: string | null;
  /** A specific concentration limit, not the table's figure. */
  readonly specific: boolean;
}

export type IngredientRule =
  /** At or above its cut-off. */
  | 'at-cut-off'
  | 'below-cut-off'
  | 'specific-limit'
  | 'corrosive-alone'
  | 'irritant-alone'
  | 'damaging-alone'
  /** A strong acid or base in a mixture whose pH is not known. */
  | 'strong-without-ph';

/** Each ingredient by itself against its limit. */
export interface IngredientsBecause extends ReasonBase {
  readonly kind: 'ingredients';
  readonly rule: IngredientRule;
  readonly comparisons: readonly Comparison[];
}

export type NoneRule =
  | 'skin'
  | 'eye'
  | 'respiratory-irritation'
  | 'narcotic-effects'
  | 'aspiration'
  | 'aquatic'
  | 'not-classified-so';

/** No ingredient has the hazard at its cut-off. */
export interface NoneBecause extends ReasonBase {
  readonly kind: 'none';
  readonly rule: NoneRule;
  /** Cut-offs in percent, the lowest first. */
  readonly from: readonly number[];
  /** Of `not-classified-so`: the class that no ingredient has. */
  readonly class?: string;
}

/** An estimate in the additivity formula of acute toxicity. */
export interface EstimateTerm extends Term {
  readonly over: Exact;
  /** Category whose point estimate was taken; null where the ingredient has a value of its own. */
  readonly converted: string | null;
}

interface OfRoute extends ReasonBase {
  /** Route or form. */
  readonly key: AcuteKey;
  readonly unknown: readonly Term[];
}

/** 100 / ATEmix = sum of Ci / ATEi, corrected where much is unknown. */
export interface AdditivityBecause extends OfRoute {
  readonly kind: 'additivity';
  readonly terms: readonly EstimateTerm[];
  readonly ateMix: number;
  readonly limit: number;
  /** Null where ATEmix is above the last category. */
  readonly category: string | null;
  readonly corrected: boolean;
}

/** Every ingredient lies in one category. */
export interface SharedCategoryBecause extends OfRoute {
  readonly kind: 'shared-category';
  readonly terms: readonly EstimateTerm[];
  readonly ateMix: number;
  readonly limit: number;
  readonly category: string;
}

/** No ingredient enters the formula. */
export interface NothingCountsBecause extends OfRoute {
  readonly kind: 'nothing-counts';
  /** Highest estimate that would count; null by inhalation, where it differs by form. */
  readonly upTo: number | null;
}

/** pH against the figures for acids and bases. */
export interface PhBecause extends ReasonBase {
  readonly kind: 'ph';
  readonly side: 'acid' | 'base';
  readonly measured: Measurement;
  readonly limit: number;
  /** What the sum says besides, with its sub-category. */
  readonly sum?: { readonly category: string; readonly because: Because };
}

/** A test on the mixture itself. */
export interface TestBecause extends ReasonBase {
  readonly kind: 'test';
  readonly method: string;
  readonly source: string;
  readonly reason: string | null;
}

/** A similar tested mixture, by a bridging principle. */
export interface BridgingBecause extends ReasonBase {
  readonly kind: 'bridging';
  readonly principle: BridgingPrinciple;
  readonly method: string;
  readonly source: string;
  readonly reason: string | null;
}

/** Serious eye damage concluded from corrosion of skin. */
export interface ConcludedBecause extends ReasonBase {
  readonly kind: 'concluded';
  readonly from: 'Skin Corr. 1';
}

/** The class is not in force for mixtures yet. */
export interface NotYetBecause extends ReasonBase {
  readonly kind: 'not-yet';
  /** YYYY-MM-DD */
  readonly from: string;
}

/** Sensitizers that may provoke a reaction below their limit for classification. */
export interface ElicitorsBecause extends ReasonBase {
  readonly kind: 'elicitors';
  readonly elicitors: readonly {
    readonly constituent: number;
    readonly amount: Exact;
    readonly class: string;
    readonly limit: Exact;
    readonly tenth: boolean;
  }[];
}

/** Why a sheet is due on request for a mixture that is not classified. */
export interface SheetReasonsBecause extends ReasonBase {
  readonly kind: 'sheet-on-request';
  readonly reasons: readonly SheetReason[];
}

export type SheetReason =
  | {
      readonly kind: 'ingredient';
      readonly constituent: number;
      readonly amount: Exact;
      /** Class, or class and category. */
      readonly what: string;
      readonly from: number;
    }
  | { readonly kind: 'tenth'; readonly constituent: number; readonly amount: Exact; readonly limit: Exact }
  | { readonly kind: 'titanium-dioxide' };

/** Classes of the mixture that bring a supplemental statement. */
export interface ClassesBecause extends ReasonBase {
  readonly kind: 'classes';
  readonly inhaled: boolean;
}
