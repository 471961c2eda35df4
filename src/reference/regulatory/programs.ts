import programs from '../../../hazard-data/regulatory/programs.json' with { type: 'json' };
import { Exact } from '../../quantity/exact.ts';
import { compareSum } from '../../quantity/sum.ts';

/** A programme whose list is not held, so that nothing was sought in it. */
export type NotHeld = 'epcra-302' | 'caa-112r' | 'tsca-inventory' | 'other-states' | 'rules-of-use';

export const notHeld = programs.notHeld as readonly {
  readonly id: NotHeld;
  readonly cite: string;
}[];

/** Pounds of a hazardous chemical from which EPCRA sections 311 and 312 ask for a report (40 CFR 370.10(a)(2)(i)). */
export const inventoryThresholdPounds: number = programs.inventory.thresholdPounds;

/**
 * Pounds of a product that hold the reportable quantity of a constituent (40 CFR 302.6(b)(1)), not rounded; null
 * where it has none of it.
 * @param reportable pounds
 * @param percent by weight, the upper end where it varies
 */
export const productPounds = (reportable: number, percent: number): number | null =>
  percent > 0 ? (reportable * 100) / percent : null;

/** How a share of a toxic chemical stands to the de minimis concentration of 40 CFR 372.38(a). */
export interface DeMinimis {
  /** Percent that counts; for aqueous ammonia a tenth of the ammonia. */
  readonly counted: number;
  /** Percent; null for a chemical of special concern, for which there is none. */
  readonly limit: number | null;
  readonly below: boolean;
}

/**
 * Compares shares of a toxic chemical or category with its de minimis concentration: "below 1 percent of the mixture,
 * or 0.1 percent of the mixture in the case of a toxic chemical which is a carcinogen" (40 CFR 372.38(a)(1)); none for
 * chemicals of special concern ((a)(2)). Of aqueous ammonia 10 percent counts (40 CFR 372.65(a)).
 * @param percents by weight, of every constituent that belongs to the entry
 */
export function deMinimis(
  percents: readonly number[],
  kind: { readonly carcinogen: boolean; readonly specialConcern: boolean; readonly aqueousAmmonia: boolean },
): DeMinimis {
  const weight = kind.aqueousAmmonia ? programs.aqueousAmmonia.sharePercent / 100 : 1;
  const parts = percents.map(percent => ({ amount: Exact.decimal(percent), weight }));
  const counted = parts.reduce((sum, { amount }) => sum + amount.value * weight, 0);
  if (kind.specialConcern) return { counted, limit: null, below: false };
  const limit = kind.carcinogen ? programs.deMinimis.carcinogen : programs.deMinimis.percent;
  return { counted, limit, below: compareSum(parts, limit) < 0 };
}

/** Hazard types of EPCRA sections 311 and 312, in the words of 40 CFR 370.66. */
export interface HazardTypes {
  readonly health: readonly string[];
  readonly physical: readonly string[];
}

/**
 * Types of 40 CFR 370.66 that hazard classes fall under; classes outside 29 CFR 1910.1200 have none.
 * @param classes in the notation of CLP Annex VI without category; `HNOC` for a hazard not otherwise classified
 */
export function hazardTypes(classes: readonly string[]): HazardTypes {
  const of = (kind: 'health' | 'physical') =>
    programs.hazardTypes[kind]
      .filter(type => type.classes.some(each => classes.includes(each)))
      .map(({ type }) => type);
  return { health: of('health'), physical: of('physical') };
}
