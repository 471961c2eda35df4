import type { LabelPlaces } from '../../logistics/label-places.ts';
import type { HazardLabel, HazardLabels, LabelLeftOff } from '../../transport/hazard-label.ts';
import { classWord } from './_transport-values.ts';
import { plain } from './lengths.ts';

const colors: Readonly<Record<string, string>> = {
  red: 'red',
  yellow: 'yellow',
  white: 'white',
  'red-stripes-on-white': 'white with red stripes',
  'red-over-yellow': 'red over yellow',
  'white-over-black': 'white over black',
  'black-stripes-on-white': 'white with black stripes',
};

const reasons: Readonly<Record<LabelLeftOff['why'], string>> = {
  'flash-point': 'not by highway and rail, flash point at or above 38 °C',
  'beside-4.2': 'not beside the label of Division 4.2',
  'no-row': 'no label as a subsidiary hazard',
};

/** `CORROSIVE (white over black, primary)` */
const named = ({ class: division, name, color, hazard }: HazardLabel): string => {
  const inBrackets = [...(color === null ? [] : [colors[color] ?? color]), hazard].join(', ');
  return `${name ?? `the label of ${classWord(division)}`} (${inBrackets})`;
};

/** Names of the labels alone, in their order: `CORROSIVE and OXIDIZER`. */
export const labelNames = ({ labels }: Pick<HazardLabels, 'labels'>): string =>
  labels.map(({ name, class: division }) => name ?? `the label of ${classWord(division)}`).join(' and ');

const cites = (labels: readonly HazardLabel[]): string =>
  [...new Set(labels.map(({ cite }) => cite))].join('; ');

/** Hazard labels of a package as lines for a reader; none where transport is not decided. */
export function hazardLabelLines(found: HazardLabels | null): string[] {
  if (!found) return [];
  const { status, labels, leftOff, toxicByCorrosion, unlessPlacarded, cite } = found;
  if (status === 'none') return [`hazard labels: the entry asks for none [${cite}]`];
  if (status === 'excepted')
    return [
      `hazard labels: none on a limited quantity by highway, rail or vessel [${cite}]; by air ${labelNames(found)}`,
    ];
  const unless = status === 'open' ? ', unless the pack is a limited quantity' : '';
  const placarded = unlessPlacarded ? `, unless it is placarded [${unlessPlacarded}]` : '';
  return [
    `hazard labels: ${labels.map(named).join(', ')}${unless}${placarded} [${cites(labels)}]`,
    ...leftOff.map(
      ({ class: division, why, cite: allowed }) =>
        `no label of ${classWord(division)}: ${reasons[why]} [${allowed}]`,
    ),
    ...(toxicByCorrosion
      ? [`no label POISON where corrosion of tissue alone makes it toxic [${toxicByCorrosion}]`]
      : []),
  ];
}

/** Whether labels are to be stuck on: due, or due unless the pack is a limited quantity. */
export const labelsStuck = (found: HazardLabels | null): found is HazardLabels =>
  found !== null && (found.status === 'due' || found.status === 'open');

const rooms: Readonly<Record<LabelPlaces['room'], (places: LabelPlaces) => string>> = {
  'size-unknown': ({ across }) =>
    `the size of the case is not known; a label takes ${plain(across)} mm from corner to corner`,
  'one-side': () => 'a side of the case takes all of them in full size',
  'more-sides': () =>
    'no side of the case takes all of them in full size in a row: they go over an edge or are reduced',
  smaller: ({ cites }) =>
    `no side of the case takes a label in full size: it is reduced [${cites.reduced}], or stands on a tag [${cites.tag}]`,
};

/** Size and place of the labels of a case, a line each. */
export const labelPlaceLines = (places: LabelPlaces): string[] => {
  const { side, together, sides, number, weather, cites } = places;
  return [
    `size: square on a point, sides of ${side} mm or more [${cites.size}], number of the class ${number.least} to ${number.most} mm high [${number.cite}]; ${rooms[places.room](places)}`,
    `place: near the shipping name on the same side, not the bottom [${cites.surface}]; several within ${together} mm of one another [${cites.together}]${
      sides === 2 ? `; on two sides, as the case has 1.8 m³ or more [${cites.twice}]` : ''
    }`,
    `to be bought in print: they bear colors and symbols that one ribbon does not print, and stand ${weather.days} days of exposure in transport [${weather.cite}]; on a ground of like color they need an outer border [${cites.contrast}]`,
  ];
};

/** Line on the label with number and name: what is stuck beside it. */
export const stickBeside = (found: HazardLabels, { side, together }: LabelPlaces): string =>
  `Stick beside this: ${labelNames(found)} (${found.labels.map(each => each.class).join(', ')}), sides of ${side} mm${
    found.labels.length > 1 ? `, within ${together} mm of one another` : ''
  }; 49 CFR 172.400, 172.406, 172.407${found.status === 'open' ? '; not on a limited quantity' : ''}`;
