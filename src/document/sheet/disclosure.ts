import { ruleFor } from '../../classify/class-rules.ts';
import type { ClassifiedConstituent } from '../../classify/classification.ts';
import { namedIn } from '../../classify/facts/figure.ts';
import type { Constituent } from '../../formula/constituent.ts';
import type { Hazard } from '../../notation/hazard.ts';
import { reaches } from '../../quantity/sum.ts';
import type { SheetIngredient } from '../../record/record-blocks.ts';
import { sheetForm } from './form.ts';
import { type ListedFor, listedFor } from './ghs/cut-offs.ts';
import { isHealth, isPhysical } from './hazards.ts';
import type { SheetInput } from './input.ts';

/** A constituent with what section 3 says of it. */
export interface Ingredient {
  /** Place in the list of constituents. */
  readonly index: number;
  readonly classified: ClassifiedConstituent;
  readonly constituent: Constituent | null;
  readonly hazards: readonly Hazard[];
  /** Classified as a health hazard at or above the cut-off of a class, or named as a cause of a classification. */
  readonly listed: boolean;
  /** Why the law of another basis than 29 CFR 1910.1200 lists it. */
  readonly reasons: readonly ListedFor[];
  /** What the record gives for the sheet of this ingredient alone. */
  readonly own: SheetIngredient | null;
}

/**
 * Which constituents section 3 names: those classified as health hazards at or above the cut-off of their class
 * (29 CFR 1910.1200 App. D, Table D.1, 3, For Mixtures (a)(1)), those that the record lists below it ((a)(2)), those
 * that a classification of the mixture rests on, and, beyond the law, those classified for physical hazards. Under
 * another basis those of `ghs/cut-offs.ts` instead of the first and the last.
 */
export function ingredients(input: SheetInput): readonly Ingredient[] {
  const { classification, formula, record } = input;
  const causes = new Set(
    classification.hazards.flatMap(
      ({ because }) => namedIn(because)?.map(({ constituent }) => constituent) ?? [],
    ),
  );
  return classification.constituents.map((classified, index) => {
    const { high, water } = classified;
    const { hazards } = classified.data;
    const health = hazards.filter(({ hazardClass }) => isHealth(hazardClass));
    const counts = health.some(hazard => reaches(high, cutOff(hazard, input.thresholds)));
    const physical = hazards.some(({ hazardClass }) => isPhysical(hazardClass));
    const own =
      record.sheetIngredients.find(({ of }) => of === classified.cas || of === classified.name) ?? null;
    const caused = hazards.length > 0 && causes.has(index);
    const ghs = isGhs(input);
    const reasons = ghs ? listedFor(input, classified, own) : [];
    const due = ghs ? reasons.length > 0 : counts || physical;
    const listed = !water && (due || caused || own?.list === true);
    return {
      index,
      classified,
      constituent: formula.constituents[index] ?? null,
      hazards,
      listed,
      reasons,
      own,
    };
  });
}

const isGhs = ({ classification }: SheetInput): boolean =>
  sheetForm(classification.basis.id).outline === 'numbered';

/** Percent from which an ingredient of a class counts; 0 where the basis names no figure for it. */
export const cutOff = ({ hazardClass, category }: Hazard, thresholds: SheetInput['thresholds']): number =>
  ruleFor(hazardClass, category)?.cutOff(thresholds, category) ?? 0;
