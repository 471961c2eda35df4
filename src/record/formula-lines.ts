import type { Exact } from '../quantity/exact.ts';
import type { Position } from '../report/diagnostic.ts';
import type { GivenData } from './given-data.ts';
import type { TradeSecret } from './record-blocks.ts';

/** An amount of one line of a formula. */
export type Amount =
  | { readonly kind: 'mass'; readonly grams: Exact; readonly written: string }
  | { readonly kind: 'volume'; readonly millilitres: Exact; readonly written: string }
  | {
      readonly kind: 'percent';
      readonly low: Exact;
      readonly high: Exact;
      readonly written: string;
      /** The range comes near its end without reaching it: `< 10`. */
      readonly lowOpen?: boolean;
      readonly highOpen?: boolean;
    }
  | { readonly kind: 'balance' };

interface LineBase {
  readonly amount: Amount;
  /** g/mL, where the line or the raw material gives one. */
  readonly density: Exact | null;
  /** Temperature of that density as written, where one is named. */
  readonly densityAt?: string | null;
  readonly at: Position;
  /** `formula[2]` */
  readonly path: string;
  /** The line of the file that `at` points to, for findings. */
  readonly excerpt?: string;
}

/** A substance weighed or metered into the batch. */
export interface SubstanceLine extends LineBase {
  readonly kind: 'substance';
  readonly name: string;
  readonly cas: string | null;
  readonly given: GivenData;
  readonly tradeSecret: TradeSecret | null;
  /** The line is a raw material of which its supplier gives the hazards and not the composition. */
  readonly undisclosed: boolean;
}

/** A raw material with a composition of its own. */
export interface RawMaterialLine extends LineBase {
  readonly kind: 'raw-material';
  readonly material: RawMaterial;
}

export type FormulaLine = SubstanceLine | RawMaterialLine;

/** Size of a whole batch; amounts are divided by it where the record gives one. */
export type BatchSize =
  | { readonly kind: 'mass'; readonly grams: Exact; readonly written: string }
  | { readonly kind: 'volume'; readonly millilitres: Exact; readonly written: string };

/** What comes in a drum: a name and its composition, itself lines of substances or further raw materials. */
export interface RawMaterial {
  readonly file: string;
  readonly name: string;
  readonly supplier: string | null;
  /** The supplier's data sheet: revision, date (year-month-day) and file, as far as they are given. */
  readonly sheet: {
    readonly revision: string | null;
    readonly date: string | null;
    readonly file: string | null;
  } | null;
  readonly strength: string | null;
  /** g/mL */
  readonly density: Exact | null;
  /** Temperature of that density as written, where one is named. */
  readonly densityAt?: string | null;
  readonly source: string | null;
  readonly batch: BatchSize | null;
  /** One line of the material's own name where the supplier gives its hazards and no composition. */
  readonly formula: readonly FormulaLine[];
}
