import type { LabelData } from '../../reference/label-data/load-label-data.ts';
import type { Conditional, Omission, PrecautionaryStatement } from '../label-elements.ts';
import type { LabelledProduct } from '../labelled-product.ts';
import type { ShownHazard } from '../shown-hazards.ts';
import { codeOf, type Precaution, type Progress } from './_precaution.ts';
import { collectPrecautions } from './collect.ts';
import { joinRoutes, medicalResponse } from './medical-response.ts';
import { inOrder } from './order.ts';
import { proposeWithin } from './propose.ts';
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
  readonly conditional: readonly Conditional[];
} {
  const collected = collectPrecautions(shown, labelData, product);
  const called = withoutOmitted(collected, labelData, product);
  const stringent = joinStorage(withoutRepetition(mostStringent(called, labelData), labelData));
  const joined = joinRoutes(medicalResponse(stringent, labelData), labelData);
  const merged = proposeWithin(withoutOmitted(joined, labelData, product), labelData, product);
  const missing: Omission[] = [];
  const texts = new Map<Precaution, PrecautionaryStatement>();
  for (const precaution of merged.precautions) {
    const result = wordPrecaution(precaution, labelData, product);
    if ('missing' in result) missing.push(result.missing);
    else texts.set(precaution, result.statement);
  }
  for (const code of product.add ?? [])
    if (code.startsWith('P') && !labelData.statements.precautionary[code])
      missing.push({ what: code, why: { kind: 'no-text' }, cite: labelData.statements.instrument });
  const statements = inOrder([...texts.keys()], labelData.precautions).map(each => texts.get(each)!);
  const left = new Set(merged.precautions.flatMap(({ parts }) => parts));
  const conditional = collected.conditional.filter(({ statement }) =>
    plainParts(statement).every(part => left.has(part)),
  );
  return { statements, omitted: merged.omitted, missing, conditional };
}

const plainParts = (code: string): readonly string[] => code.replace('[+', '+').replace(']', '').split('+');

/** Without statements that the record omits as inappropriate, with its reason (C.2.4.9). */
function withoutOmitted(
  { precautions, omitted }: Progress,
  { precautions: rules, basis }: LabelData,
  { omit = [] }: LabelledProduct,
): Progress {
  const asked = new Map(omit.map(({ code, reason }) => [code, reason]));
  const gone = precautions.filter(each => asked.has(codeOf(each)));
  return {
    precautions: precautions.filter(each => !gone.includes(each)),
    omitted: [
      ...omitted,
      ...gone.map(each => ({
        what: codeOf(each),
        why: { kind: 'record', reason: asked.get(codeOf(each))! } as const,
        cite: rules.cites.inappropriate[basis],
      })),
    ],
  };
}
