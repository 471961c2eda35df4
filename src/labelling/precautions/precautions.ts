import type { LabelData } from '../../reference/label-data/load-label-data.ts';
import type { Omission, PrecautionaryStatement } from '../label-elements.ts';
import type { LabelledProduct } from '../labelled-product.ts';
import type { ShownHazard } from '../shown-hazards.ts';
import type { Precaution } from './_precaution.ts';
import { collectPrecautions } from './collect.ts';
import { withinLimit } from './limit.ts';
import { joinRoutes, medicalResponse } from './medical-response.ts';
import { inOrder } from './order.ts';
import { joinStorage, mostStringent, withoutRepetition } from './stringency.ts';
import { wordPrecaution } from './wording.ts';

/** Precautionary statements of all hazards together (29 CFR 1910.1200 App. C, C.2.4; CLP Articles 22 and 28). */
export function precautionsOf(
  shown: readonly ShownHazard[],
  labelData: LabelData,
  product: LabelledProduct,
): {
  readonly statements: readonly PrecautionaryStatement[];
  readonly omitted: readonly Omission[];
  readonly missing: readonly Omission[];
} {
  const collected = collectPrecautions(shown, labelData, product);
  const stringent = joinStorage(withoutRepetition(mostStringent(collected, labelData), labelData));
  const merged = joinRoutes(medicalResponse(stringent, labelData), labelData);
  const missing: Omission[] = [];
  const texts = new Map<Precaution, PrecautionaryStatement>();
  for (const precaution of merged.precautions) {
    const result = wordPrecaution(precaution, labelData, product);
    if ('missing' in result) missing.push(result.missing);
    else texts.set(precaution, result.statement);
  }
  const limited = withinLimit(
    { precautions: [...texts.keys()], omitted: merged.omitted },
    labelData,
    product,
  );
  const statements = inOrder(limited.precautions, labelData.precautions).map(each => texts.get(each)!);
  return { statements, omitted: limited.omitted, missing };
}
