import { type LabelPurpose, labelPurposes, type PurposeDecision } from '../../labelling/purposes.ts';
import type { ClassifiedProduct } from '../classified-product.ts';
import { purposes } from './purposes.ts';

/** Which labels of a product are made. */
export interface DueLabels {
  readonly decisions: readonly PurposeDecision[];
  /** Those to make, the main one first. */
  readonly made: readonly LabelPurpose[];
}

/**
 * The labels that `sold-to` of the record makes due. A product whose buyers are not known, or that no law asks a
 * label for, gets the usual one: a container without any label helps nobody.
 */
export function dueLabels({
  record,
  classification,
}: Pick<ClassifiedProduct, 'record' | 'classification'>): DueLabels {
  const decisions = labelPurposes(record.soldTo, classification.hazards.length > 0);
  const made = decisions
    .filter(({ outcome, ground }) => outcome === 'due' || (outcome === 'open' && ground !== 'sale-unknown'))
    .map(({ purpose }) => purpose);
  return { decisions, made: made.length > 0 ? made : [purposes[0]!.id] };
}

/** Name of the file of a label without its ending: the main label of a pack for a press has the plain name. */
export const labelStem = (
  pack: string,
  purpose: LabelPurpose,
  { made }: DueLabels,
  {
    target = 'press',
    only,
    language = 'en',
  }: { readonly target?: string; readonly only?: string; readonly language?: string } = {},
): string =>
  [
    'label',
    // A sign is of no pack.
    ...(purpose === 'tank' ? [] : [pack]),
    ...(purpose === made[0] ? [] : [purpose]),
    ...(target === 'press' ? [] : [target]),
    ...(only ? [only] : []),
    ...(language === 'en' ? [] : [language.replace('+', '-')]),
  ].join('-');
