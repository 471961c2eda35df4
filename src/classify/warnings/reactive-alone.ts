import type { Scale } from '../../quantity/scale.ts';
import { bySource } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';
import type { Mixture } from '../ingredient.ts';
import { type Grouped, groupedIn, type ReactiveGroup, reactiveGroups, useCite } from '../reactivity.ts';

type Alone = Pick<Required<ReactiveGroup>, 'id' | 'alone'>;

const aloneGroups: readonly Alone[] = reactiveGroups.flatMap(({ id, alone }) =>
  alone ? [{ id, alone }] : [],
);

/**
 * What a product must not be mixed with in use, because of one constituent by itself: the user's mixing is use that can be
 * foreseen (29 CFR 1910.1200(d)(1)(ii); App. D, Table D.1, 2(c) and 10). One warning for all.
 * @param mixture at the upper ends of ranges.
 * @param present its ingredients with their groups, where they are known already.
 */
export function reactiveAlone(
  { ingredients }: Mixture,
  scale: Scale,
  present: readonly Grouped[] = groupedIn(ingredients),
): Warning[] {
  if (present.length === 0) return [];
  const found: (Alone & { readonly constituents: readonly number[] })[] = [];
  for (const { id, alone } of aloneGroups) {
    const constituents: number[] = [];
    for (const { ingredient, groups } of present)
      if (groups.has(id) && scale.reaches(ingredient.percent, alone.from))
        constituents.push(ingredient.index);
    if (constituents.length > 0) found.push({ id, alone, constituents });
  }
  if (found.length === 0) return [];
  return [
    {
      id: 'reactive-alone',
      groups: found.map(({ id: group, constituents, alone: { with: others, gives } }) => ({
        group,
        constituents,
        with: others,
        gives,
      })),
      cites: [useCite, ...new Set(found.map(({ alone }) => alone.source))].map(bySource),
    },
  ];
}
