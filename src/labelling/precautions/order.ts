import type { PrecautionRules } from '../../reference/label-data/rules.ts';
import type { PrecautionGroup } from '../label-elements.ts';
import { codeOf, type Precaution } from './_precaution.ts';

const groups: readonly PrecautionGroup[] = ['general', 'prevention', 'response', 'storage', 'disposal'];

/** General, prevention, response by route, storage, disposal; within a group by code. */
export function inOrder(precautions: readonly Precaution[], { order }: PrecautionRules): Precaution[] {
  const key = (precaution: Precaution): string => {
    const { group, parts, place } = precaution;
    const at = group === 'response' ? order.response.indexOf(place ?? parts[0]!) : 0;
    const rank = at < 0 ? order.response.length : at;
    return [groups.indexOf(group), String(rank).padStart(3, '0'), codeOf(precaution)].join(' ');
  };
  return [...precautions].sort((a, b) => (key(a) < key(b) ? -1 : 1));
}
