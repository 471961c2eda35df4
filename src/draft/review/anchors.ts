import type { PointPlace } from './point.ts';

/** The id of a place on the reviewer's page. */
export function anchorOf(place: PointPlace): string {
  switch (place.kind) {
    case 'section':
      return `${place.basis}-section-${place.section}`;
    case 'item':
      return `${place.basis}-section-${place.section}-${place.key}`;
    case 'part':
      return place.part;
  }
}
