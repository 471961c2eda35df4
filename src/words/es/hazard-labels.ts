import type { HazardLabel, HazardLabels, LabelLeftOff } from '../../transport/hazard-label.ts';

const colors: Readonly<Record<string, string>> = {
  red: 'roja',
  yellow: 'amarilla',
  white: 'blanca',
  'red-stripes-on-white': 'blanca con franjas rojas',
  'red-over-yellow': 'roja sobre amarillo',
  'white-over-black': 'blanca sobre negro',
  'black-stripes-on-white': 'blanca con franjas negras',
};

const reasons: Readonly<Record<LabelLeftOff['why'], string>> = {
  'flash-point': 'no por carretera ni ferrocarril, punto de inflamación de 38 °C o más',
  'beside-4.2': 'no junto a la etiqueta de la división 4.2',
  'no-row': 'sin etiqueta como peligro secundario',
};

const hazards: Readonly<Record<HazardLabel['hazard'], string>> = {
  primary: 'principal',
  subsidiary: 'secundaria',
};

const classNamed = (division: string): string =>
  division.includes('.') ? `división ${division}` : `clase ${division}`;

// The words of a label stay as 49 CFR prints them.
const nameOf = ({ name, class: division }: HazardLabel): string =>
  name ?? `la etiqueta de ${classNamed(division)}`;

const named = (label: HazardLabel): string => {
  const { color, hazard } = label;
  const inBrackets = [...(color === null ? [] : [colors[color] ?? color]), hazards[hazard]].join(', ');
  return `${nameOf(label)} (${inBrackets})`;
};

/** Hazard labels of a package in one text; null where transport is not decided. */
export function hazardLabels(found: HazardLabels | null): string | null {
  if (!found) return null;
  const { status, labels, leftOff, toxicByCorrosion, unlessPlacarded, cite } = found;
  if (status === 'none') return `Etiquetas de peligro: la entrada no pide ninguna [${cite}].`;
  if (status === 'excepted')
    return `Etiquetas de peligro: ninguna en una cantidad limitada por carretera, ferrocarril o buque [${cite}]; por vía aérea ${labels.map(nameOf).join(' y ')}.`;
  const unless = status === 'open' ? ', salvo que el bulto sea una cantidad limitada' : '';
  const placarded = unlessPlacarded ? `, salvo que lleve rótulos [${unlessPlacarded}]` : '';
  const cites = [...new Set(labels.map(label => label.cite))].join('; ');
  const parts = [
    `Etiquetas de peligro: ${labels.map(named).join(', ')}${unless}${placarded} [${cites}]`,
    ...leftOff.map(
      ({ class: division, why, cite: allowed }) =>
        `sin etiqueta de ${classNamed(division)}: ${reasons[why]} [${allowed}]`,
    ),
    ...(toxicByCorrosion
      ? [`sin etiqueta POISON si solo la corrosión de los tejidos lo hace tóxico [${toxicByCorrosion}]`]
      : []),
  ];
  return `${parts.join('; ')}.`;
}
