import type { Condition } from '../../reference/groups/groups.ts';
import type { Found, Listed } from '../../reference/lists/look-up.ts';

const CONDITIONS: Readonly<Record<Condition, string>> = {
  mist: 'para la niebla',
  dust: 'para el polvo',
  'respirable-dust': 'para partículas en el aire de tamaño respirable',
  'acid-aerosol': 'solo para aerosoles ácidos: nieblas, vapores, gas',
  'manufacture-only': 'solo para quien fabrica la sustancia, sin notificación del proveedor',
  aqueous: 'solo en disolución acuosa',
  'aqueous-ammonia': 'del amoniaco acuoso cuenta el 10 %',
};

export const conditionText = (condition: Condition): string => CONDITIONS[condition];

/** What limits an entry or leaves it to judgement; empty where nothing does. */
export const foundText = <R extends Listed>({ group, membership, condition }: Found<R>): string =>
  [
    group && membership === 'possible' ? `posible miembro del grupo: ${group.title}` : null,
    condition && conditionText(condition),
  ]
    .filter(part => part !== null)
    .join('; ');
