import type { LabelData } from '../../reference/label-data/load-label-data.ts';
import type { LabelledProduct } from '../labelled-product.ts';
import { codeOf, contains, type Precaution, type Progress } from './_precaution.ts';

/**
 * Where a basis limits the number of statements (CLP Article 28(3): not more than six, unless the nature and severity
 * of the hazards call for more) the first in the order of priority; those that the maker keeps, and first aid for
 * hazards with the signal word Danger, stay beyond the number.
 */
export function withinLimit(
  { precautions, omitted }: Progress,
  labelData: LabelData,
  product: LabelledProduct,
): Progress {
  const { precautions: rules, rules: labelRules } = labelData;
  const limit = labelRules.precautionLimit;
  if (!limit || precautions.length <= limit.most) return { precautions, omitted };
  const { ranks, consumerFirst, necessary } = rules.priority;
  const grave = ({ rows }: Precaution) => rows.some(({ signalWord }) => signalWord === 'Danger');
  const matches = (precaution: Precaution) => (code: string) => contains(precaution, code);
  const rank = (precaution: Precaution): number => {
    if (product.consumer && consumerFirst.some(matches(precaution))) return -1;
    const at = ranks.findIndex(codes => codes.some(matches(precaution)));
    return (at < 0 ? ranks.length : at) - (grave(precaution) ? 0.5 : 0);
  };
  const stays = (precaution: Precaution) =>
    product.keep?.includes(codeOf(precaution)) || (grave(precaution) && necessary.some(matches(precaution)));
  const ranked = [...precautions].sort((a, b) => rank(a) - rank(b) || (codeOf(a) < codeOf(b) ? -1 : 1));
  const kept = new Set([...ranked.slice(0, limit.most), ...ranked.filter(stays)]);
  const gone = ranked.filter(precaution => !kept.has(precaution));
  return {
    precautions: precautions.filter(precaution => kept.has(precaution)),
    omitted: [...omitted, ...gone.map(each => ({ what: codeOf(each), why: limit.why, cite: limit.cite }))],
  };
}
