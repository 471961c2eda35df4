import type { BasisId } from '../../reference/basis.ts';
import { type PointGroup, type PointPart, pointGroups } from '../../words/review-page-words.ts';

export type { PointGroup };

/** Where on the reviewer's page a point is looked up. */
export type PointPlace =
  | { readonly kind: 'section'; readonly basis: BasisId; readonly section: number }
  | { readonly kind: 'item'; readonly basis: BasisId; readonly section: number; readonly key: string }
  | { readonly kind: 'part'; readonly part: PointPart };

/** Something that a reviewer must look at. */
export interface ReviewPoint {
  readonly group: PointGroup;
  readonly text: string;
  readonly places: readonly PointPlace[];
  /** A finding of a part, which is also said by itself. */
  readonly finding?: boolean;
}

export const inSection = (basis: BasisId, section: number): PointPlace => ({
  kind: 'section',
  basis,
  section,
});

export const inPart = (part: PointPart): PointPlace => ({ kind: 'part', part });

/** Points in the order in which they are looked at; one that is said twice stands once, with all its places. */
export function worstFirst(points: readonly ReviewPoint[]): readonly ReviewPoint[] {
  const told = new Map<string, ReviewPoint>();
  const rank = ({ group }: ReviewPoint): number => pointGroups.indexOf(group);
  for (const point of [...points].sort((one, other) => rank(one) - rank(other))) {
    const before = told.get(point.text);
    const places = [...(before?.places ?? []), ...point.places];
    const distinct = [...new Map(places.map(place => [JSON.stringify(place), place])).values()];
    told.set(point.text, { ...(before ?? point), places: distinct });
  }
  return [...told.values()];
}
