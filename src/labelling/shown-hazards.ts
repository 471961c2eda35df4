import type { Classification, ClassifiedHazard } from '../classify/classification.ts';
import { namedIn } from '../classify/facts/figure.ts';
import { compare } from '../quantity/sum.ts';
import type { AllocationRow } from '../reference/label-data/allocation.ts';
import { findRow } from '../reference/label-data/find-row.ts';
import type { LabelData } from '../reference/label-data/load-label-data.ts';
import type { Omission } from './label-elements.ts';
import type { LabelledProduct, Place } from './labelled-product.ts';

/** A hazard with its row of the allocation table. */
export interface ShownHazard {
  readonly hazard: ClassifiedHazard;
  readonly row: AllocationRow;
}

/**
 * Hazards that the label or the sheet shows, in the order of the table; those left off by choice; those without a row.
 * A warning that is optional on the label stands on the sheet (29 CFR 1910.1200 App. A, note to Table A.6.1).
 */
export function shownHazards(
  { hazards }: Classification,
  { allocation, rules }: LabelData,
  product: LabelledProduct,
  place: Place = 'label',
): {
  readonly shown: readonly ShownHazard[];
  readonly omitted: readonly Omission[];
  readonly missing: readonly Omission[];
} {
  const shown: ShownHazard[] = [];
  const omitted: Omission[] = [];
  const missing: Omission[] = [];
  for (const hazard of hazards) {
    const row = findRow(allocation, hazard);
    const option =
      place === 'label' ? rules.optional.find(each => leavesOff(each, hazard, product)) : undefined;
    if (option)
      omitted.push({ what: hazard.code, why: { kind: 'rule', text: option.why }, cite: option.cite });
    else if (row) shown.push({ hazard, row });
    else
      missing.push({
        what: hazard.code,
        why: { kind: 'no-row' },
        cite: allocation.cite,
      });
  }
  const seat = ({ row }: ShownHazard) => allocation.rows.indexOf(row);
  const details = ({ hazard }: ShownHazard) => [hazard.organs.join(), hazard.statements.join()].join('\t');
  const sorted = shown.sort((a, b) => seat(a) - seat(b) || (details(a) < details(b) ? -1 : 1));
  return { shown: sorted, omitted, missing };
}

/** Note to Table A.6.1 of 29 CFR 1910.1200: the label warning is optional while every trigger is below the figure. */
function leavesOff(
  { code, below, reading, leftOffBy }: LabelData['rules']['optional'][number],
  { code: own, because }: ClassifiedHazard,
  { choice }: LabelledProduct,
): boolean {
  if (own !== code || choice?.(reading) !== leftOffBy) return false;
  const named = namedIn(because) ?? [];
  return named.length > 0 && named.every(({ amount }) => compare(amount, below) < 0);
}
