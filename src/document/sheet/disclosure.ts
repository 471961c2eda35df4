import type { ClassifiedConstituent } from '../../classify/classification.ts';
import type { Constituent } from '../../formula/constituent.ts';
import type { Hazard } from '../../notation/hazard.ts';
import { isHealth, isPhysical, readHazards } from './hazards.ts';
import type { SheetInput } from './input.ts';

/** A constituent with what section 3 says of it. */
export interface Ingredient {
  readonly classified: ClassifiedConstituent;
  readonly constituent: Constituent | null;
  readonly hazards: readonly Hazard[];
  /** Classified as a health hazard at or above the cut-off of a class, or named as a cause of a classification. */
  readonly listed: boolean;
  /** Classified as a health hazard, but below every cut-off. */
  readonly belowCutOff: boolean;
}

/**
 * Which constituents section 3 names: those classified as health hazards at or above the cut-off of their class
 * (29 CFR 1910.1200 App. D, Table D.1, 3, For Mixtures (a)), those that a classification of the mixture rests on,
 * and, beyond the law, those classified for physical hazards.
 */
export function ingredients(input: SheetInput): readonly Ingredient[] {
  const { classification, formula } = input;
  const causes = new Set(
    classification.hazards.flatMap(({ because }) => because.terms?.map(({ name }) => name) ?? []),
  );
  return classification.constituents.map(classified => {
    const { name, cas, percent, water } = classified;
    const hazards = readHazards(classified.hazards);
    const health = hazards.filter(({ hazardClass }) => isHealth(hazardClass));
    const reaches = health.some(hazard => percent >= cutOff(hazard, input.thresholds));
    const physical = hazards.some(({ hazardClass }) => isPhysical(hazardClass));
    const listed = !water && (reaches || physical || (hazards.length > 0 && causes.has(name)));
    return {
      classified,
      constituent: formula.constituents.find(other => other.name === name && other.cas === cas) ?? null,
      hazards,
      listed,
      belowCutOff: health.length > 0 && !listed,
    };
  });
}

/** Percent from which an ingredient of a class counts; 0 where the basis names no figure for it. */
export function cutOff(
  { hazardClass, category }: Hazard,
  { acuteToxicity, skin, eye, byIngredient, transientOrganEffects, aspiration }: SheetInput['thresholds'],
): number {
  switch (hazardClass) {
    case 'Acute Tox.':
      return Number(acuteToxicity.relevantFrom[category] ?? 0);
    case 'Skin Corr.':
    case 'Skin Irrit.':
      return skin.relevantFrom.percent;
    case 'Eye Dam.':
    case 'Eye Irrit.':
      return eye.relevantFrom.percent;
    case 'Asp. Tox.':
      return aspiration.relevantFrom.percent;
    default: {
      if (hazardClass === 'STOT SE' && category === '3') return transientOrganEffects.relevantFrom.percent;
      const rows = byIngredient[hazardClass]?.rows.filter(row => row.ingredient === category) ?? [];
      return rows.length > 0 ? Math.min(...rows.map(({ from }) => from)) : 0;
    }
  }
}
