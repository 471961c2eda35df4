import type { Fact } from '../../transport/fact.ts';
import { transport as english } from '../en/sheet-transport.ts';
import type { SheetWords } from '../sheet-words.ts';
import { hazardLabels } from './hazard-labels.ts';

type Values = Fact['values'];

const number = (value: Values[string] | undefined): string =>
  typeof value === 'number' ? String(Number(value.toPrecision(6))).replace('.', ',') : String(value ?? '?');

const modes = (value: Values[string] | undefined): string =>
  (value as readonly string[]).map(mode => (mode === 'A' ? 'vía aérea' : 'vía marítima')).join(' y ');

/** Grounds on which the sheet says that a product is not regulated. */
const grounds: Readonly<Record<string, (values: Values) => string>> = {
  'no-class': () => 'no se cumple ninguna clase de peligro, y no queda abierta ninguna que lo decidiera',
  'combustible-non-bulk': v =>
    `líquido combustible en un embalaje que no es a granel (como máximo ${number(v.litres)} L) y que no es sustancia peligrosa, residuo peligroso ni contaminante marino: no sujeto por carretera ni ferrocarril`,
  'other-modes-alone': v => `${String(v.un)}: sujeto solo por ${modes(v.modes)}`,
  'aqueous-alcohol': v =>
    `disolución acuosa con un ${number(v.percentByVolume)} % aproximado de alcohol en volumen (límite ${number(v.limit)} %), con ${number(v.water)} % de agua (al menos ${number(v.waterLimit)} %) y sin otra materia peligrosa: no sujeto`,
};

const worked = (facts: readonly Fact[]): string =>
  facts.map(fact => `${grounds[fact.id]!(fact.values)} [${fact.cite}]`).join('; ');

/** Texts of section 14; what its reviewer must look at stays in the language of the reviewer. */
export const transport: SheetWords['transport'] = {
  ...english,
  hazardClass: ({ class: name, subsidiary }) => {
    const shown = name === 'Comb liq' ? 'Líquido combustible' : (name ?? '');
    return subsidiary.length > 0 ? `${shown} (${subsidiary.join(', ')})` : shown;
  },
  packingGroup: group => group ?? 'No procede: la entrada no tiene grupo de embalaje.',
  notRegulated: because => {
    const answer = 'No regulado por carretera ni ferrocarril en los Estados Unidos (49 CFR partes 171 a 180)';
    return because.length > 0 ? `${answer}: ${worked(because)}` : `${answer}.`;
  },
  notApplicable: 'No procede: no regulado por carretera ni ferrocarril en los Estados Unidos.',
  marinePollutant: yes =>
    yes
      ? 'Contaminante marino: sí (49 CFR 171.8 y 172.101, apéndice B).'
      : 'Contaminante marino: no; no se encontró ningún componente en el apéndice B de 49 CFR 172.101 en la concentración de 171.8.',
  limitedQuantity: ({ allowed, innerLimit, grossLimit, cite }) => {
    if (innerLimit === null) return `Cantidad limitada: ninguna [${cite}].`;
    const limits = `envases interiores de hasta ${innerLimit}, bulto de hasta ${grossLimit} [${cite}].`;
    if (allowed === null) return `Cantidad limitada: faltan datos del envase; ${limits}`;
    return `Cantidad limitada: ${allowed ? 'permitida' : 'no para este envase'}; ${limits}`;
  },
  hazardLabels,
  packed: packs => `No se transporta a granel por vía marítima: se vende en envases (${packs.join(', ')}).`,
  modes:
    'Redactado para carretera y ferrocarril en los Estados Unidos. El transporte aéreo, el marítimo y otros países tienen normas y límites propios, que aquí no se han calculado.',
  ofPacks: (packs, text) => `${packs.join(', ')}: ${text}`,
};
