import type { Fact } from '../../transport/fact.ts';
import { transport as english } from '../en/sheet-transport.ts';
import type { TransportCondition } from '../en/transport-cases.ts';
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

const division = (value: Values[string] | undefined): string => {
  const name = String(value);
  if (name === 'Comb liq') return 'líquido combustible';
  return `${name.includes('.') ? 'división' : 'clase'} ${name}`;
};
const group = (value: Values[string] | undefined): string =>
  value ? `grupo de embalaje ${String(value)}` : 'sin grupo de embalaje';
const routes: Readonly<Record<string, string>> = {
  oral: 'por ingestión',
  dermal: 'por vía cutánea',
  inhalation: 'por inhalación',
};

/** Outcomes of a missing test, under which the sheet says what the product comes to. */
const conditions: Readonly<Record<TransportCondition, (values: Values) => string>> = {
  'none-of-them': () => 'si no se cumple ninguna de las clases abiertas',
  'class-3': v => `si el punto de inflamación lo sitúa en la clase 3, ${group(v.group)}`,
  combustible: () => 'si el punto de inflamación lo hace líquido combustible',
  'not-water-miscible': () => 'si no es miscible con agua',
  'boils-above': v => `si empieza a hervir por encima de ${number(v.limit)} °C`,
  'boils-at-or-below': v => `si empieza a hervir a ${number(v.limit)} °C o menos`,
  'skin-corrosion-group': v => `si el ensayo cutáneo da ${group(v.group)}`,
  'metal-alone': () => 'si el ensayo cutáneo no muestra corrosión y corroe el acero o el aluminio',
  'corrodes-nothing': () => 'si no corroe ni la piel ni los metales',
  'corrodes-metal': () => 'si corroe el acero o el aluminio',
  'toxic-vapour': v => `si su vapor es tóxico en ${group(v.group)}`,
  toxic: v => `si es tóxico ${routes[String(v.route)] ?? String(v.route)} en ${group(v.group)}`,
  'other-class': v => `si es de ${division(v.class)}, ${group(v.group)}`,
  'by-approval': v => `si es de ${division(v.class)}`,
  'other-modes-alone': v => `por ${modes(v.modes)}`,
  'by-vessel': () => 'por vía marítima o a granel',
  'reclassed-combustible': v =>
    `si se reclasifica como líquido combustible (punto de inflamación ${number(v.flashPoint)} °C, igual o superior a ${number(v.limit)} °C), por carretera o ferrocarril`,
  'does-not-sustain-combustion': () => 'si un ensayo muestra que no mantiene la combustión',
  'aluminum-alone': () => 'si el ensayo muestra corrosión del aluminio solo, por carretera o ferrocarril',
  'excepted-quantity': () => 'como cantidad exceptuada, embalada, ensayada y marcada como pide el apartado',
  'concentration-of': v => `con ${number(v.percent)} % de ${String(v.name)}`,
  'domestic-cleaning-compound': () => 'como producto de limpieza, dentro de los Estados Unidos',
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
  inCase: (when, text) => {
    const cases = when.map(({ id, values }) => conditions[id as TransportCondition](values)).join('; o ');
    return `${cases[0]!.toUpperCase()}${cases.slice(1)}: ${text}`;
  },
  modes:
    'Redactado para carretera y ferrocarril en los Estados Unidos. El transporte aéreo, el marítimo y otros países tienen normas y límites propios, que aquí no se han calculado.',
  ofPacks: (packs, text) => `${packs.join(', ')}: ${text}`,
};
