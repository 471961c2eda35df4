import type { Classification, ClassifiedConstituent, ClassifiedHazard } from '../classify/classification.ts';
import type { LabelElements } from '../labelling/label-elements.ts';
import { printHazard } from '../notation/print-hazard.ts';
import type { ProductRecord } from '../record/product-record.ts';
import { tellAll } from '../words/telling.ts';
import type { Words } from '../words/words.ts';
import { reasonWriter } from './because-json.ts';

/** The classification and its label elements in the fixed JSON form `labelwright/classification/1`. */
export function classificationJson(
  { name, code }: Pick<ProductRecord, 'name' | 'code'>,
  classification: Classification,
  elements: LabelElements,
  words: Words,
) {
  const write = reasonWriter(classification, words);
  const telling = tellAll(classification);
  const hazardJson = (hazard: ClassifiedHazard) => ({
    code: hazard.code,
    route: hazard.route,
    ...(hazard.form ? { form: hazard.form } : {}),
    ...(hazard.effect ? { effect: hazard.effect } : {}),
    ...(hazard.organs.length > 0 ? { organs: hazard.organs } : {}),
    ...(hazard.triggers ? { triggers: hazard.triggers } : {}),
    statements: hazard.statements,
    because: write.because(hazard.because),
    ...(hazard.milder ? { milder: hazard.milder } : {}),
    ...write.calculated(hazard.calculated),
  });
  return {
    schema: 'labelwright/classification/1',
    product: { name, code },
    basis: classification.basis,
    constituents: classification.constituents.map(constituent => constituentJson(constituent, words)),
    hazards: classification.hazards.map(hazardJson),
    otherClasses: classification.otherClasses.map(
      ({ class: label, route, outcome, because, calculated }) => ({
        class: label,
        route,
        outcome,
        because: write.because(because),
        ...write.calculated(calculated),
      }),
    ),
    ateMix: classification.ateMix,
    unknownAcuteToxicity: classification.unknownAcuteToxicity,
    ...(classification.unknownAquatic === null ? {} : { unknownAquatic: classification.unknownAquatic }),
    signalWord: elements.signalWord,
    pictograms: elements.pictograms,
    hazardStatements: elements.hazardStatements,
    precautionaryStatements: elements.precautionaryStatements.map(({ lead: _, ...statement }) => statement),
    supplemental: elements.supplemental,
    omitted: elements.omitted.map(each => ({ ...each, why: words.statements.why(each.why) })),
    ...(elements.missing.length > 0 && {
      missing: elements.missing.map(each => ({ ...each, why: words.statements.why(each.why) })),
    }),
    ...(elements.conditional.length > 0 && { conditional: elements.conditional }),
    readings: classification.readings.map(reading => ({
      id: reading.id,
      taken: words.taken(reading),
      cite: reading.cite,
    })),
    warnings: classification.warnings.map(warning => ({
      id: warning.id,
      text: words.warning(warning, telling),
      ...(warning.cites.length > 0 && { cite: words.cites(warning.cites) }),
    })),
  };
}

function constituentJson(constituent: ClassifiedConstituent, words: Words) {
  const { name, cas, low, high, data, water } = constituent;
  return {
    name,
    cas,
    percent: high.value,
    hazards: data.hazards.map(printHazard),
    source: words.source(data.source),
    unknown: [...data.unknown],
    values: words.values(constituent),
    water,
    ...(low.value === high.value ? {} : { percentRange: [low.value, high.value] }),
  };
}
