import type { Exact } from '../../quantity/exact.ts';
import type { PhysicalForm } from '../../record/product-record.ts';
import type { Provision } from './provision.ts';
import type { Measurement, ReasonBase, Term } from './reason-base.ts';

/** Flash point, and initial boiling point where it decides. */
export interface FlashPointBecause extends ReasonBase {
  readonly kind: 'flash-point';
  /** `missing`: not in the record; `none`: a test found none. */
  readonly found: 'missing' | 'none' | 'temperature';
  /** Of a temperature and of `none`. */
  readonly measured?: Measurement;
  readonly method?: string | null;
  readonly source?: string | null;
  /** Degrees Celsius by which a closed cup was taken to lie below an open one. */
  readonly lessOpenCup?: number;
  /** Bounds in degrees Celsius that the flash point was held against; null where open. */
  readonly above?: { readonly limit: number; readonly operator: '>=' | '>' } | null;
  readonly upTo?: { readonly limit: number; readonly operator: '<' | '<=' } | null;
  /** Of a flash point that is missing: constituents that are flammable liquids. */
  readonly flammable?: readonly number[];
  readonly boiling?: {
    readonly measured: Measurement | null;
    readonly limit: number;
    readonly reached: boolean;
  };
}

/** A class that is not for the physical form of the product. */
export interface FormBecause extends ReasonBase {
  readonly kind: 'form';
  readonly forms: readonly PhysicalForm[];
  readonly form: PhysicalForm;
  readonly aspiration?: boolean;
}

/** The product is one substance. */
export interface SubstanceBecause extends ReasonBase {
  readonly kind: 'substance';
  readonly constituent: number;
  readonly code: string;
}

/** What points to a class without deciding it. */
export type Sign =
  | {
      readonly kind: 'ingredient';
      readonly constituent: number;
      readonly amount: Exact;
      readonly code: string;
    }
  | { readonly kind: 'corrosive'; readonly constituent: number; readonly amount: Exact }
  | { readonly kind: 'ph'; readonly pH: Exact };

/** Evidence is needed. */
export interface SignsBecause extends ReasonBase {
  readonly kind: 'signs';
  readonly class: string;
  readonly signs: readonly Sign[];
  /** Whether the ingredients cannot show that a product is not of the class. */
  readonly notFromIngredients: boolean;
}

/** No ingredient points to a class that tests decide. */
export interface ScreeningBecause extends ReasonBase {
  readonly kind: 'screening';
  readonly classes: readonly string[];
}

/** Available oxygen of organic peroxides. */
export interface OxygenBecause extends ReasonBase {
  readonly kind: 'oxygen';
  readonly terms: readonly (Term & { readonly groups: number; readonly over: Exact })[];
  /** Mass of oxygen of one group, g/mol. */
  readonly oxygen: number;
  readonly total: number;
  /** Null where hydrogen peroxide is above the last row. */
  readonly limit: number | null;
  readonly exempt: boolean;
  readonly hydrogenPeroxide: { readonly total: number; readonly limit: number; readonly reached: boolean };
  readonly types: Provision;
}

/** Organic peroxides without the data for available oxygen. */
export interface PeroxideDataBecause extends ReasonBase {
  readonly kind: 'peroxide-data';
  readonly peroxides: readonly {
    readonly constituent: number;
    readonly amount: Exact;
    readonly code: string | null;
  }[];
  readonly without: readonly number[];
  readonly types: Provision;
}

/** Flammable components of an aerosol. */
export interface AerosolBecause extends ReasonBase {
  readonly kind: 'aerosol';
  readonly terms: readonly Term[];
  readonly total: number;
  readonly limit: number;
  readonly above: boolean;
  readonly category: string;
  readonly otherwise: string;
  /** kJ/g */
  readonly heatOfCombustion: number;
}
