import type { Context } from '../context.ts';
import { ofHealth } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';
import { askedFrom, strongWithoutPh } from '../strong.ts';

/**
 * Strong acids and bases in a mixture without a pH: the pH is the criterion, and a sum may come out too mild (A.2.3.3.4,
 * A.3.3.3.4; CLP and UN 3.2.3.3.4, 3.3.3.3.4). One warning for all of them.
 * @param context at the upper ends of ranges.
 */
export function phMissing({ mixture, basis, scale, take }: Context): Warning[] {
  const strong = strongWithoutPh(mixture).filter(({ percent }) => scale.reaches(percent, askedFrom));
  if (strong.length === 0) return [];
  return [
    {
      id: 'ph-missing',
      constituents: strong.map(({ index, percent }) => ({ constituent: index, amount: percent })),
      severe: take('ph-missing') === 'category-1',
      cites: [ofHealth(basis, basis.skin.notAdditive.cite), ofHealth(basis, basis.eye.notAdditive.cite)],
    },
  ];
}
