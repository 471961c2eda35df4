import type { Classification, ClassifiedHazard } from '../classify/classification.ts';
import type { LabelElements } from '../labelling/label-elements.ts';
import type { ProductRecord } from '../record/product-record.ts';

/** The classification and its label elements in the fixed JSON form `labelwright/classification/1`. */
export function classificationJson(
  { name, code }: Pick<ProductRecord, 'name' | 'code'>,
  classification: Classification,
  elements: LabelElements,
) {
  return {
    schema: 'labelwright/classification/1',
    product: { name, code },
    basis: classification.basis,
    constituents: classification.constituents,
    hazards: classification.hazards.map(hazardJson),
    otherClasses: classification.otherClasses,
    ateMix: classification.ateMix,
    unknownAcuteToxicity: classification.unknownAcuteToxicity,
    ...(classification.unknownAquatic === null ? {} : { unknownAquatic: classification.unknownAquatic }),
    signalWord: elements.signalWord,
    pictograms: elements.pictograms,
    hazardStatements: elements.hazardStatements,
    precautionaryStatements: elements.precautionaryStatements,
    supplemental: elements.supplemental,
    omitted: elements.omitted,
    readings: classification.readings,
    warnings: classification.warnings,
  };
}

const hazardJson = ({
  code,
  route,
  form,
  effect,
  organs,
  triggers,
  statements,
  because,
  calculated,
}: ClassifiedHazard) => ({
  code,
  route,
  ...(form ? { form } : {}),
  ...(effect ? { effect } : {}),
  ...(organs.length > 0 ? { organs } : {}),
  ...(triggers ? { triggers } : {}),
  statements,
  because,
  ...(calculated ? { calculated } : {}),
});
