import type { Route } from '../notation/hazard.ts';

/** Why a class is open, in short. */
export type OpenCause =
  | { readonly kind: 'flash-point' | 'viscosity' | 'test' | 'other' }
  /** Constituents on which data are lacking. */
  | { readonly kind: 'data'; readonly constituents: readonly number[] };

/** The classification in short. */
export interface Answer {
  readonly signalWord: string | null;
  /** Class and category, with what tells two of the same code apart. */
  readonly hazards: readonly { readonly code: string; readonly of: string | null }[];
  /** Classes that are not decided, those of one cause together. */
  readonly open: readonly {
    readonly classes: readonly { readonly class: string; readonly of: string | null }[];
    readonly cause: OpenCause;
  }[];
}

/** Sections of a supplier's data sheet that hold what a classification needs. */
export type AskedSection = 2 | 3 | 9 | 11 | 12;

/** What is missing. */
export type Wanted =
  /** Nothing is known, or none is said to be and no source says so. */
  | { readonly kind: 'classification' }
  /** Classes and categories that a list gives as the least. */
  | { readonly kind: 'minimum'; readonly codes: readonly string[] }
  | { readonly kind: 'organs'; readonly codes: readonly string[] }
  | { readonly kind: 'composition' | 'identity' | 'limits' | 'peroxygen' }
  | { readonly kind: 'flash-point' | 'boiling-point' | 'pH' | 'viscosity' }
  | { readonly kind: 'acute'; readonly routes: readonly Route[] }
  | { readonly kind: 'inhalation-form'; readonly codes: readonly string[] }
  | { readonly kind: 'aquatic' }
  | { readonly kind: 'm-factor'; readonly of: readonly ('acute' | 'chronic')[] };

/** A question to a supplier about a constituent; about the product itself where there is none. */
export interface SupplierQuestion {
  /** Raw materials through which the constituent came, outermost first; empty where the formula names it directly. */
  readonly through: readonly string[];
  /** Place in the list of constituents; null of the product itself. */
  readonly constituent: number | null;
  readonly section: AskedSection;
  readonly wants: Wanted;
}

/** The answer that stands first, and the list of what to ask. */
export interface AnswerWords {
  /** One or two lines. */
  lines(answer: Answer, names: (constituent: number) => string): readonly string[];
  readonly ask: { readonly title: string; readonly head: readonly string[] };
  /** Whom a question concerns: raw materials, an ingredient, or the product. */
  subject(through: readonly string[], name: string | null): string;
  /** @param name of the constituent, where the subject does not say it. */
  question(wants: Wanted, ofProduct: boolean, name: string | null): string;
  /** Questions of one section of the sheet in a line. */
  section(section: AskedSection, ofProduct: boolean, questions: readonly string[]): string;
}
