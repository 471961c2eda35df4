import type { Hazard } from '../notation/hazard.ts';
import type { Exact } from '../quantity/exact.ts';
import { reaches } from '../quantity/sum.ts';
import { type SupplyPackaging, supplyPackagingRules } from '../reference/supply/packaging-rules.ts';

/** What the rules ask of a product. */
export interface SuppliedProduct {
  readonly form: 'liquid' | 'solid' | 'gas' | 'aerosol';
  readonly hazards: readonly Pick<Hazard, 'hazardClass' | 'category'>[];
  readonly constituents: readonly {
    readonly name: string;
    readonly cas: string | null;
    /** Percent by weight; the higher end of a range. */
    readonly high: Exact;
  }[];
}

/** A child-resistant fastening or a tactile warning that is asked for, and what asks for it. */
export interface SupplyPackagingFinding {
  readonly what: SupplyPackaging;
  readonly cite: string;
  /** Classes with their categories, or names of substances. */
  readonly because: readonly string[];
}

/** What a package for the general public must have (CLP Annex II, part 3, 3.1.1 and 3.2.1). */
export function supplyPackaging({
  form,
  hazards,
  constituents,
}: SuppliedProduct): readonly SupplyPackagingFinding[] {
  const { rules, substances } = supplyPackagingRules;
  const byClass = rules
    .filter(({ spared }) => !spared?.includes(form))
    .map(({ what, cite, classes }): SupplyPackagingFinding => {
      const counting = hazards.filter(({ hazardClass, category }) =>
        classes.some(each => each.class === hazardClass && (each.categories?.includes(category) ?? true)),
      );
      const because = counting.map(({ hazardClass, category }) => `${hazardClass} ${category}`.trim());
      return { what, cite, because: [...new Set(because)] };
    });
  const named = constituents
    .filter(({ cas, high }) => {
      const from = cas === null ? undefined : substances.from[cas];
      return from !== undefined && reaches(high, from);
    })
    .map(({ name }) => name);
  return [...byClass, { what: substances.what, cite: substances.cite, because: named }].filter(
    ({ because }) => because.length > 0,
  );
}
