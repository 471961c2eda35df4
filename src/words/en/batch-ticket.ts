import type { Caution, KeepApart } from '../../batch/cautions.ts';
import type { BatchStep, ShopMeasure } from '../../batch/ticket.ts';
import type { PackYield } from '../../batch/yield.ts';
import { plain } from './lengths.ts';

/** Four significant digits, as a scale or a meter shows them. */
const short = (value: number): string =>
  value >= 1000 ? String(Math.round(value)) : plain(Number(value.toPrecision(4)), 4);

const list = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

const span = (low: string, high: string): string => (low === high ? high : `${low} to ${high}`);

/** `2 drums + 22 gal`, `3 pails`: whole containers and what is over. */
export function containersText({ containers }: ShopMeasure): string | null {
  if (!containers) return null;
  const { container, full, restGallons, count } = containers;
  const rest = Number(restGallons.toPrecision(3));
  const decimal = `${plain(count, 2)} ${container}${count <= 1 ? '' : 's'}`;
  if (full === 0) return decimal;
  const whole = `${full} ${container}${full === 1 ? '' : 's'}`;
  return rest < 0.01 ? whole : `${whole} + ${short(rest)} gal (${decimal})`;
}

/** Weights and volumes of a step, each as one or as a range. */
export function stepAmounts({ low, high, ranged }: BatchStep) {
  const both = (of: (measure: ShopMeasure) => number | null): string | null => {
    const [from, to] = [of(low), of(high)];
    return from === null || to === null ? null : span(short(from), short(to));
  };
  return {
    pounds: both(({ pounds }) => pounds)!,
    kilograms: both(({ kilograms }) => kilograms)!,
    gallons: both(({ gallons }) => gallons),
    containers: ranged ? null : containersText(high),
  };
}

/** Share of the batch: `40.21 %`, `12 to 14 %`. */
export const percentText = ({ material: { low, high } }: BatchStep): string =>
  `${span(short(low.value), short(high.value))} %`;

/** Size of a batch: `2274 lb (1031 kg), 250 gal, 4 drums + 30 gal (4.55 drums)`. */
export function sizeText(size: ShopMeasure): string {
  const { pounds, kilograms, gallons } = size;
  const volume = gallons === null ? [] : [`${short(gallons)} gal`];
  const containers = containersText(size);
  return [
    `${short(pounds)} lb (${short(kilograms)} kg)`,
    ...volume,
    ...(containers ? [containers] : []),
  ].join(', ');
}

const dangers: Readonly<Record<string, string>> = {
  'toxic gas': 'TOXIC GAS',
  'fire or explosion': 'FIRE OR EXPLOSION',
  pressure: 'GAS AND PRESSURE',
  heat: 'HEAT',
  'new substance': 'A new substance forms',
};

const together = (danger: string, here: readonly string[], there: string, gives: string): string =>
  `${dangers[danger] ?? danger}: ${list(here)} meets ${there}; gives ${gives}.`;

/** A caution of a step. */
export function cautionText(caution: Caution): string {
  switch (caution.id) {
    case 'acid-into-water':
      return `Acid (${list(caution.names)}): add it slowly into the water, never water into it. It heats up; stir and watch the temperature.`;
    case 'base-into-water':
      return `Strong alkali (${list(caution.names)}): add it slowly into the water, never water into it. It heats up; stir and watch the temperature.`;
    case 'water-onto-acid':
      return `STOP: water would go onto ${list(caution.names)} in the tank. Put the water in first.`;
    case 'water-onto-base':
      return `STOP: water would go onto ${list(caution.names)} in the tank. Put the water in first.`;
    case 'keep-from':
      return `Never let ${caution.from} near it (${list(caution.names)}): gives ${caution.gives}.`;
    case 'range':
      return 'The formula gives a range: a qualified person sets the amount before it is weighed.';
    case 'aspiration':
      return 'May be fatal if it gets into the lungs: never start a siphon by mouth.';
    case 'meets':
      return together(
        caution.danger,
        caution.here,
        `${list(caution.there)} of step ${caution.step}`,
        caution.gives,
      ).concat(
        caution.danger === 'heat' || caution.danger === 'new substance'
          ? ' Add slowly, stir, watch the temperature.'
          : ' Do not go on unless a qualified person has settled how.',
      );
    case 'flammable':
      return 'Flammable: no flames or sparks, ground and bond drum and tank, close the drum at once.';
    case 'oxidizing':
      return 'Oxidizer: keep away from rags, sawdust, oil and solvents.';
    case 'water-reactive':
      return 'Gives flammable gas with water: dry tools only.';
    case 'ventilate':
      return 'Vapor, mist or dust: run the exhaust before the container is opened.';
    case 'corrosive':
      return 'Attacks skin or eyes: goggles, face shield, gloves; eyewash within reach.';
    case 'through-skin':
      return 'Toxic through the skin: gloves and apron; wash splashes off at once.';
    case 'sensitizing':
      return 'May cause allergy: no skin contact, no dust or mist in the air.';
    case 'long-term':
      return 'Long-term hazard: closed handling; see section 8 of its data sheet.';
    case 'untested':
      return `Ingredients are classified ${list(caution.hazards)}; whether the material is, stands on its label.`;
    case 'no-data':
      return `No hazard data for ${list(caution.names)}: handle as hazardous.`;
  }
}

/** Two materials that must not meet undiluted. */
export const apartText = ({ first, second, danger, gives }: KeepApart, names: readonly string[]): string =>
  `${names[second - 1]} (${second}) and ${names[first - 1]} (${first}): ${(dangers[danger] ?? danger).toLowerCase()}; gives ${gives}`;

/** What a batch fills of a pack. */
export function yieldText({ packs, cases, casesOf, loose }: PackYield): {
  readonly packs: string;
  readonly cases: string;
} {
  if (packs === null) return { packs: 'density of the product is needed', cases: '' };
  if (cases === null) return { packs: String(packs), cases: '' };
  return {
    packs: String(packs),
    cases: `${cases} ${cases === 1 ? 'case' : 'cases'} of ${casesOf}${loose ? ` + ${loose} loose` : ''}`,
  };
}

/** Fixed words of ticket and labels. */
export const batchWords = {
  draft:
    'DRAFT for qualified review. The order of addition and the cautions are worked out from the formula and its hazard data; a qualified person settles them, and local codes and licensed practice come first.',
  copy: 'Review copy: it holds the formula. Keep it in the shop.',
  order:
    'Order proposed: water, plain materials, alkalis, acids, what releases chlorine or oxygen; the largest amount first within each (common practice, no source).',
  asListed: 'Order as the formula lists it; it was not worked out.',
  losses: 'Yield is of the whole batch; what stays in tank, hoses and filler is not taken off.',
  densities: (measured: readonly string[], without: readonly string[]): readonly string[] => [
    'Gallons hold at the temperature of the densities. Warm or cold material is weighed.',
    ...(measured.length > 0 ? [`Densities, g/mL: ${measured.join('; ')}.`] : []),
    ...(without.length > 0
      ? [`No density is known of ${list(without)}: weigh ${without.length === 1 ? 'it' : 'them'}.`]
      : []),
  ],
  /** A density of the list. @param at its temperature as the record writes it */
  densityOf: (name: string, value: string, at: string | null): string =>
    `${name} ${value} ${at === null ? '(no temperature named)' : `at ${at}`}`,
  /** What the density of the batch is to be. */
  densityTarget: (written: string): string =>
    / at /.test(written) ? written : `${written} (no temperature named)`,
  lotText: (made: string, number: number): string => `batch ${number} of ${made}`,
  pH: 'pH',
  density: 'Density',
  flashPoint: 'Flash point',
  appearance: 'Color and odor',
  temperature: 'Temperature of the batch',
  byHand: ['Date', 'Initials', 'Lot of supplier'],
  labelFoot: (code: string): string =>
    `${code} · container in the shop, 29 CFR 1910.1200(f)(6) · DRAFT for qualified review`,
  labelTitle: (name: string): string => `${name}: labels of raw materials`,
  noHazards: 'No hazard class was found from the data held.',
  unknown: (names: readonly string[]): string => `No hazard data for ${list(names)}: treat as hazardous.`,
  untested: (hazards: readonly string[]): string =>
    `Ingredients are ${list(hazards)}: go by the label of the supplier.`,
  supplier: "Where the supplier's label says more, it counts.",
} as const;
