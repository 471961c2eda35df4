import type { PrecautionRules } from '../../reference/label-data/rules.ts';
import type { PrecautionGroup } from '../label-elements.ts';
import { codeOf, type Precaution } from './_precaution.ts';

const groups: readonly PrecautionGroup[] = ['general', 'prevention', 'response', 'storage', 'disposal'];

/** General, prevention, response by route, storage, disposal; within a group by code. */
export function inOrder(precautions: readonly Precaution[], { order }: PrecautionRules): Precaution[] {
  const placed = precautions.map(precaution => {
    const { group, parts, place } = precaution;
    const at = group === 'response' ? order.response.indexOf(place ?? parts[0]!) : 0;
    const rank = at < 0 ? order.response.length : at;
    return { precaution, group: groups.indexOf(group), rank, code: codeOf(precaution) };
  });
  placed.sort((a, b) => a.group - b.group || a.rank - b.rank || (a.code < b.code ? -1 : 1));
  return placed.map(({ precaution }) => precaution);
}
