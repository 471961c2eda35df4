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

/** How an entry was reached where its name alone does not show it; empty where it does. */
export function foundText<R extends Listed>(found: Found<R>): string {
  const parts = [
    found.group &&
      `as ${found.membership === 'possible' ? 'a possible member' : 'a member'} of: ${found.group.title}`,
    found.membership === 'possible' ? 'to be judged by the reviewer' : null,
    found.condition && conditionText(found.condition),
  ].filter(Boolean);
  return parts.join('; ');
}

/** Names of a list in one line. */
export const joined = (names: readonly string[]): string => names.join('; ');
