import type { Condition } from '../../reference/groups/groups.ts';
import type { Found, Listed } from '../../reference/lists/look-up.ts';

const CONDITIONS: Readonly<Record<Condition, string>> = {
  mist: 'for the mist',
  dust: 'for the dust',
  'respirable-dust': 'for airborne particles of respirable size',
  'acid-aerosol': 'for acid aerosols alone: mists, vapors, gas, fog',
  'manufacture-only': 'for makers of the substance alone, no supplier notification',
  aqueous: 'in water solution alone',
  'aqueous-ammonia': 'of aqueous ammonia 10 % counts',
};

export const conditionText = (condition: Condition): string => CONDITIONS[condition];

/** What limits an entry or leaves it to judgement; empty where nothing does. */
export const foundText = <R extends Listed>({ group, membership, condition }: Found<R>): string =>
  [
    group && membership === 'possible' ? `possibly a member of the group: ${group.title}` : null,
    condition && conditionText(condition),
  ]
    .filter(part => part !== null)
    .join('; ');
