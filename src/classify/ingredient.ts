import type { Hazard, InhalationForm } from '../notation/hazard.ts';
import type { AteValues, SpecificLimit } from '../notation/limit.ts';
import type { SupplementalLimit } from '../notation/parse-limit.ts';
import type { Exact } from '../quantity/exact.ts';
import type { Endpoint } from '../record/given-data.ts';
import type { Evidence, PhysicalForm, Properties } from '../record/product-record.ts';

/** What is known of a constituent's hazards, from the record or from the harmonised entry. */
export interface IngredientData {
  readonly hazards: readonly Hazard[];
  readonly limits: readonly SpecificLimit[];
  readonly ate: AteValues;
  readonly mFactors: { readonly acute: number; readonly chronic: number; readonly given: boolean };
  readonly unknown: ReadonlySet<Endpoint>;
  /** Neither the record nor the harmonised table knows anything of it. */
  readonly noData: boolean;
  /** EUH codes of the harmonised entry. */
  readonly supplemental: readonly string[];
  /** Concentrations from which an EUH code of the entry is due. */
  readonly supplementalLimits: readonly SupplementalLimit[];
  /** Where the data come from, as printed. */
  readonly source: string;
  /** `*` of Annex VI 1.2.1 on any hazard. */
  readonly minimum: boolean;
}

/** A constituent with its data, before its percent is fixed. */
export interface Ingredient {
  readonly name: string;
  readonly cas: string | null;
  readonly water: boolean;
  readonly additive: boolean;
  /** The record says that it counts below the cut-off for relevant ingredients. */
  readonly relevant: boolean;
  readonly data: IngredientData;
  readonly percent: Exact;
}

/** A mixture at one corner of its ranges. */
export interface Mixture {
  readonly form: PhysicalForm;
  readonly ingredients: readonly Ingredient[];
  readonly properties: Properties;
  readonly evidence: readonly Evidence[];
}

/** The form in which an inhalation category without a form is judged (reading `inhalation-form`). */
export const inhalationFormOf = (form: PhysicalForm): InhalationForm =>
  form === 'gas' ? 'gas' : form === 'liquid' ? 'vapour' : 'mist';

/** Hazards of one class. */
export const hazardsOf = ({ data }: Ingredient, hazardClass: string): readonly Hazard[] =>
  data.hazards.filter(hazard => hazard.hazardClass === hazardClass);

/** Specific limits of one class. */
export const limitsOf = ({ data }: Ingredient, hazardClass: string): readonly SpecificLimit[] =>
  data.limits.length === 0 ? data.limits : data.limits.filter(limit => limit.hazardClass === hazardClass);

/** The lowest lower bound among specific limits, or null. */
export function lowestBound(limits: readonly SpecificLimit[]): Exact | null {
  let lowest: Exact | null = null;
  for (const { low } of limits) if (low && (!lowest || low.value < lowest.value)) lowest = low;
  return lowest;
}
