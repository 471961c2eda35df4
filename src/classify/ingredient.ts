import type { Hazard, InhalationForm } from '../notation/hazard.ts';
import type { AteValues, SpecificLimit } from '../notation/limit.ts';
import type { SupplementalLimit } from '../notation/parse-limit.ts';
import type { Exact } from '../quantity/exact.ts';
import type { Endpoint, PeroxideData } from '../record/given-data.ts';
import type { Evidence, PhysicalForm, Properties } from '../record/product-record.ts';

/** Where the data of a constituent come from. */
export type DataSource =
  | {
      readonly kind: 'record' /** As the record words it; null where it names none. */;
      readonly named: string | null;
    }
  | {
      readonly kind: 'harmonised';
      /** Index number of CLP Annex VI. */
      readonly index: string;
      /** `Regulation (EU) 2025/1222` */
      readonly act: string;
      /** Whether the record adds values to the entry. */
      readonly added: boolean;
    }
  | { readonly kind: 'water' }
  /** Neither record nor entry; the source that the record names for a value, if any. */
  | { readonly kind: 'none'; readonly named: string | null };

/** What is known of a constituent's hazards, from the record or from the harmonised entry. */
export interface IngredientData {
  readonly hazards: readonly Hazard[];
  readonly limits: readonly SpecificLimit[];
  readonly ate: AteValues;
  readonly mFactors: {
    readonly acute: number;
    readonly chronic: number;
    /** Which of the two were set; the other is 1 (reading `m-factor-missing`). */
    readonly given: ReadonlySet<'acute' | 'chronic'>;
  };
  /** Of an organic peroxide, where the record gives it. */
  readonly peroxide: PeroxideData | null;
  readonly unknown: ReadonlySet<Endpoint>;
  /** Neither the record nor the harmonised table knows anything of it. */
  readonly noData: boolean;
  /** Part by weight of the substance that is the metal which its generic limits count (CLP Annex VI, Note 1); null where the whole does. */
  readonly metal: number | null;
  /** EUH codes of the harmonised entry. */
  readonly supplemental: readonly string[];
  /** Concentrations from which an EUH code of the entry is due. */
  readonly supplementalLimits: readonly SupplementalLimit[];
  readonly source: DataSource;
  /** `*` of Annex VI 1.2.1 on any hazard. */
  readonly minimum: boolean;
}

/** A constituent with its data, before its percent is fixed. */
export interface Ingredient {
  /** Place in the list of constituents. */
  readonly index: number;
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
  /** Hazard classes of which any ingredient has a hazard or a specific limit, or is a peroxide by its structure. */
  readonly classes: ReadonlySet<string>;
}

/** The form in which an inhalation category without a form is judged (reading `inhalation-form`). */
export const inhalationFormOf = (form: PhysicalForm): InhalationForm =>
  form === 'gas' ? 'gas' : form === 'liquid' ? 'vapour' : 'mist';

const nothing: readonly never[] = [];

const byClass = new WeakMap<readonly object[], ReadonlyMap<string, readonly object[]>>();

// Every class asks every ingredient; lists are grouped once.
function groupOf<T extends { readonly hazardClass: string }>(
  list: readonly T[],
  hazardClass: string,
): readonly T[] {
  if (list.length === 0) return nothing;
  let groups = byClass.get(list) as ReadonlyMap<string, readonly T[]> | undefined;
  if (!groups) {
    const made = new Map<string, T[]>();
    for (const each of list) {
      const group = made.get(each.hazardClass);
      if (group) group.push(each);
      else made.set(each.hazardClass, [each]);
    }
    groups = made;
    byClass.set(list, made);
  }
  return groups.get(hazardClass) ?? nothing;
}

/** Hazards of one class. */
export const hazardsOf = ({ data }: Ingredient, hazardClass: string): readonly Hazard[] =>
  groupOf(data.hazards, hazardClass);

/** Specific limits of one class. */
export const limitsOf = ({ data }: Ingredient, hazardClass: string): readonly SpecificLimit[] =>
  groupOf(data.limits, hazardClass);

/** Hazard classes of which any ingredient has a hazard or a specific limit, or is a peroxide by its structure. */
export function classesIn(all: readonly IngredientData[]): ReadonlySet<string> {
  const classes = new Set<string>();
  for (const { hazards, limits, peroxide } of all) {
    for (const { hazardClass } of hazards) classes.add(hazardClass);
    for (const { hazardClass } of limits) classes.add(hazardClass);
    if (peroxide) classes.add('Org. Perox.');
  }
  return classes;
}

/** Whether any ingredient concerns one of the classes. */
export function concerns({ classes }: Mixture, hazardClasses: readonly string[]): boolean {
  for (const hazardClass of hazardClasses) if (classes.has(hazardClass)) return true;
  return false;
}

/** The lowest lower bound among specific limits, or null. */
export function lowestBound(limits: readonly SpecificLimit[]): Exact | null {
  let lowest: Exact | null = null;
  for (const { low } of limits) if (low && (!lowest || low.value < lowest.value)) lowest = low;
  return lowest;
}
