import type { Classification, ClassifiedHazard } from '../classify/classification.ts';
import type { PictogramCode, SignalWord } from '../labelling/label-elements.ts';
import type { TransientEffect } from '../notation/hazard.ts';
import { printHazard } from '../notation/print-hazard.ts';

/** What the label takes from a classification. */
export interface LabelHead {
  readonly signalWord: SignalWord | null;
  readonly pictograms: readonly PictogramCode[];
}

/** Chooses signal word and pictograms for a classification. */
export type LabelOf = (classification: Classification) => LabelHead;

/** What a mixture has: its hazards as read in the notation, and what its label takes from them. */
export interface State {
  readonly classification: Classification;
  readonly hazards: readonly string[];
  /** Codes of the supplemental statements that composition decides. */
  readonly supplemental: readonly string[];
  readonly label: LabelHead | null;
}

/** A hazard of a mixture in the notation, with brackets, and its H-code where that says more. */
export const hazardText = (hazard: ClassifiedHazard): string =>
  printHazard({
    ...hazard,
    effect: hazard.effect as TransientEffect | null,
    statement: hazard.statements[0] ?? null,
    minimum: false,
  });

export const stateOf = (classification: Classification, labelOf: LabelOf | null): State => ({
  classification,
  hazards: classification.hazards.map(hazardText),
  supplemental: classification.supplemental.map(({ code }) => code),
  label: labelOf?.(classification) ?? null,
});

/** Whether two mixtures have the same hazards, supplemental statements, signal word and pictograms. */
export function sameState(a: State, b: State): boolean {
  return (
    sameList(a.hazards, b.hazards) &&
    sameList(a.supplemental, b.supplemental) &&
    a.label?.signalWord === b.label?.signalWord &&
    sameList(a.label?.pictograms ?? [], b.label?.pictograms ?? [])
  );
}

const sameList = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every(each => b.includes(each));
