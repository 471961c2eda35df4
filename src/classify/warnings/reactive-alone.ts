import type { Scale } from '../../quantity/scale.ts';
import { bySource } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';
import type { Mixture } from '../ingredient.ts';
import { groupsOf, reactiveGroups, useCite } from '../reactivity.ts';

const aloneGroups = reactiveGroups.flatMap(({ id, alone }) => (alone ? [{ id, alone }] : []));

/**
 * What a product must not be mixed with in use, because of one constituent by itself: the user's mixing is use that can be
 * foreseen (29 CFR 1910.1200(d)(1)(ii); App. D, Table D.1, 2(c) and 10). One warning for all.
 * @param mixture at the upper ends of ranges.
 */
export function reactiveAlone({ ingredients }: Mixture, scale: Scale): Warning[] {
  const grouped = ingredients.map(ingredient => ({ ingredient, groups: groupsOf(ingredient) }));
  const present = grouped.filter(({ groups }) => groups.size > 0);
  if (present.length === 0) return [];
  const found = aloneGroups.flatMap(({ id, alone }) => {
    const of = present.filter(
      ({ ingredient, groups }) => groups.has(id) && scale.reaches(ingredient.percent, alone.from),
    );
    return of.length > 0
      ? [{ group: id, constituents: of.map(({ ingredient }) => ingredient.index), alone }]
      : [];
  });
  if (found.length === 0) return [];
  return [
    {
      id: 'reactive-alone',
      groups: found.map(({ group, constituents, alone: { with: others, gives } }) => ({
        group,
        constituents,
        with: others,
        gives,
      })),
      cites: [useCite, ...new Set(found.map(({ alone }) => alone.source))].map(bySource),
    },
  ];
}
