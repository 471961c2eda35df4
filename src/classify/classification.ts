import type { InhalationForm, Route, TransientEffect } from '../notation/hazard.ts';
import type { Exact } from '../quantity/exact.ts';
import type { BasisId } from '../reference/basis.ts';
import type { Because } from './facts/because.ts';
import type { Warning } from './facts/warning.ts';
import type { IngredientData } from './ingredient.ts';
import type { ReadingId } from './readings.ts';

export type { BasisId };

/** What the calculation said where evidence replaced it. */
export interface Replaced {
  /** Class and category, or the outcome where it gave none. */
  readonly outcome: string;
  readonly because: Because;
}

/** A class and category that the mixture has. */
export interface ClassifiedHazard {
  /** Class and category without brackets: `Skin Corr. 1B`. */
  readonly code: string;
  /** Class abbreviation without category: `Skin Corr.`, `STOT SE`. */
  readonly hazardClass: string;
  readonly category: string;
  readonly route: Route | null;
  readonly form: InhalationForm | null;
  /** STOT SE 3 effect, or null. */
  readonly effect: TransientEffect | null;
  /** Target organs of STOT 1 and 2, as the ingredients name them. */
  readonly organs: readonly string[];
  /** Of reproductive toxicity where every ingredient names its effect and the H-code has no letters for it. */
  readonly harms?: 'fertility' | 'development' | 'both';
  /** Categories of the triggering ingredients where they say more than `category` (sensitizers 1A, 1B). */
  readonly triggers?: readonly string[];
  /** H-codes. */
  readonly statements: readonly string[];
  readonly because: Because;
  /** What the ranges give at their milder ends, where that is less: class and category, or the outcome. */
  readonly milder?: string;
  /** Set where whole-mixture evidence or a bridging principle replaced the calculation. */
  readonly calculated?: Replaced;
}

export type OtherOutcome = 'not-classified' | 'insufficient-data' | 'not-applicable';

/** A class that the mixture was examined for and does not have. */
export interface OtherClass {
  readonly class: string;
  readonly route?: Route;
  readonly outcome: OtherOutcome;
  readonly because: Because;
  readonly calculated?: Replaced;
}

/** A reading of the law on which a result depends, and what is taken for it. */
export interface Reading {
  readonly id: ReadingId;
  /** One of the options of the reading. */
  readonly taken: string;
  readonly cite: string;
}

/** A constituent as it was classified. */
export interface ClassifiedConstituent {
  readonly name: string;
  readonly cas: string | null;
  readonly low: Exact;
  /** Percent; equal to `low` where no range was given. */
  readonly high: Exact;
  readonly data: IngredientData;
  /** Whether summing holds for skin and eye. */
  readonly additive: boolean;
  /** Whether the record says that it counts below its cut-off. */
  readonly relevant: boolean;
  readonly water: boolean;
}

/** The classification of a mixture under one basis, with a reason for every class. */
export interface Classification {
  readonly basis: { readonly id: BasisId; readonly title: string; readonly asOf: string };
  readonly constituents: readonly ClassifiedConstituent[];
  readonly hazards: readonly ClassifiedHazard[];
  readonly otherClasses: readonly OtherClass[];
  /** mg/kg, mg/kg, ppmV, mg/L, mg/L; null where no ingredient counts. */
  readonly ateMix: Readonly<Record<'oral' | 'dermal' | InhalationForm, number | null>>;
  /** Percent of the mixture whose acute toxicity is unknown, by route. */
  readonly unknownAcuteToxicity: Readonly<Record<Route, number>>;
  /** Percent of the mixture with unknown hazards to the aquatic environment; null where the basis has no such class. */
  readonly unknownAquatic: number | null;
  /** Supplemental statements that composition decides (EUH codes), with the words for their blanks. */
  readonly supplemental: readonly {
    readonly code: string;
    readonly fields: Readonly<Record<string, readonly string[]>>;
    readonly because: Because;
  }[];
  readonly readings: readonly Reading[];
  readonly warnings: readonly Warning[];
}
