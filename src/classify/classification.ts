import type { InhalationForm, Route } from '../notation/hazard.ts';

export type BasisId = 'us-hcs' | 'eu-clp' | 'un-ghs';

/** Why a class was given or not: the rule, its paragraph and the arithmetic. */
export interface Because {
  /** Name of the rule in a few words. */
  readonly rule: string;
  /** Instrument and paragraph. */
  readonly cite: string;
  /** The rule worked as on paper. */
  readonly working: string;
  readonly total?: number;
  readonly limit?: number;
  readonly unit?: string;
  readonly terms?: readonly { readonly name: string; readonly percent: number; readonly weight: number }[];
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
  readonly effect: string | null;
  /** Target organs of STOT 1 and 2, as the ingredients name them. */
  readonly organs: readonly string[];
  /** Categories of the triggering ingredients where they say more than `category` (sensitizers 1A, 1B). */
  readonly triggers?: readonly string[];
  /** H-codes. */
  readonly statements: readonly string[];
  readonly because: Because;
  /** Set where whole-mixture evidence or a bridging principle replaced the calculation. */
  readonly calculated?: { readonly outcome: string; readonly because: Because };
}

export type OtherOutcome = 'not-classified' | 'insufficient-data' | 'not-applicable';

/** A class that the mixture was examined for and does not have. */
export interface OtherClass {
  readonly class: string;
  readonly route?: Route;
  readonly outcome: OtherOutcome;
  readonly because: Because;
  readonly calculated?: { readonly outcome: string; readonly because: Because };
}

export interface Reading {
  readonly id: string;
  readonly taken: string;
  readonly cite: string;
}

export interface Warning {
  readonly id: string;
  readonly text: string;
  readonly cite?: string;
}

/** A constituent as it was classified. */
export interface ClassifiedConstituent {
  readonly name: string;
  readonly cas: string | null;
  /** Percent; the upper end where a range was given. */
  readonly percent: number;
  readonly percentRange?: readonly [number, number];
  /** Hazards in the notation of the contract, with brackets. */
  readonly hazards: readonly string[];
  /** Where the hazards come from: the record's own source, the harmonised entry with its act, or none. */
  readonly source: string;
  readonly unknown: readonly string[];
  /** What else the calculation works from: estimates, M-factors, specific limits, marks of the record. */
  readonly values: readonly string[];
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
