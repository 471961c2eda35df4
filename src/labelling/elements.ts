import type { Classification } from '../classify/classification.ts';
import type { LabelData } from '../reference/label-data/load-label-data.ts';
import { distinct } from './_omissions.ts';
import { hazardStatementsOf } from './hazard-statements.ts';
import type { LabelElements } from './label-elements.ts';
import type { LabelledProduct, Place } from './labelled-product.ts';
import { pictogramsOf } from './pictograms.ts';
import { precautionsOf } from './precautions/precautions.ts';
import { shownHazards } from './shown-hazards.ts';
import { signalWordOf } from './signal-word.ts';
import { supplementalOf } from './supplemental.ts';
import { unusedSettings } from './unused.ts';

/**
 * The label elements that the law prescribes for a classification (29 CFR 1910.1200 App. C; CLP Title III; UN GHS 1.4.10).
 * @param labelData of the same basis as the classification
 * @param place the label, or section 2 of the sheet, which shows what is optional on the label
 */
export function labelElements(
  classification: Classification,
  labelData: LabelData,
  product: LabelledProduct,
  place: Place = 'label',
): LabelElements {
  const { shown, ...hidden } = shownHazards(classification, labelData, product, place);
  const signal = signalWordOf(shown, labelData);
  const pictograms = pictogramsOf(shown, labelData);
  const hazards = hazardStatementsOf(shown, labelData, product);
  const precautions = precautionsOf(shown, labelData, product);
  const supplemental = supplementalOf(classification, labelData, product);
  const elements = {
    signalWord: signal.signalWord,
    pictograms: pictograms.pictograms,
    hazardStatements: hazards.hazardStatements,
    precautionaryStatements: precautions.statements,
    supplemental: supplemental.supplemental,
    omitted: distinct([
      ...hidden.omitted,
      ...signal.omitted,
      ...pictograms.omitted,
      ...hazards.omitted,
      ...precautions.omitted,
      ...supplemental.omitted,
    ]),
    missing: distinct([
      ...hidden.missing,
      ...hazards.missing,
      ...precautions.missing,
      ...supplemental.missing,
    ]),
    conditional: precautions.conditional,
    proposed: supplemental.proposed,
  };
  return { ...elements, unused: unusedSettings(elements, labelData, product) };
}

/** The data of a basis without its number of statements for a label (CLP Article 28(3)), which binds no section of measures. */
export const withEveryPrecaution = (labelData: LabelData): LabelData => ({
  ...labelData,
  rules: { ...labelData.rules, precautionLimit: null },
});
