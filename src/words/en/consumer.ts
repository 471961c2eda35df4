import type { PackagingFinding } from '../../duties/child-resistant.ts';
import type { ConsumerHazard, OpenHazard, Origin } from '../../labelling/consumer/facts.ts';
import { show } from '../../quantity/print.ts';
import type { ConsumerWords } from '../consumer-words.ts';

const kinds: Readonly<Record<ConsumerHazard['kind'], string>> = {
  'highly-toxic': 'highly toxic',
  toxic: 'toxic',
  corrosive: 'corrosive',
  irritant: 'irritant',
  'strong-sensitizer': 'strong sensitizer',
  'extremely-flammable': 'extremely flammable',
  flammable: 'flammable',
  combustible: 'combustible',
  pressure: 'generates pressure',
};

const settling: Readonly<Record<string, string>> = {
  oral: 'the oral LD50 of the product, by a method of 16 CFR 1500.232 or in rats',
  dermal: 'the dermal LD50 of the product, by a method of 16 CFR 1500.232 or in rabbits',
  inhalation: 'the LC50 of the product over one hour, and whether such a concentration is likely in use',
  skin: 'a skin test of the product (16 CFR 1500.41 or a method of 16 CFR 1500.232)',
  eye: 'an eye test of the product (16 CFR 1500.42 or a method of 16 CFR 1500.232)',
  experience: 'human experience with the product, or a weight of evidence',
  chronic: 'the evidence on the substance by 16 CFR 1500.135, and the exposure in household use',
  aspiration: 'the viscosity of the product, and human experience with it or its substances',
  aerosol: 'flame projection and flashback (16 CFR 1500.45), and the flash point',
  'flash-point': 'the closed-cup flash point (16 CFR 1500.43a)',
  solid: 'the burning rate (16 CFR 1500.44)',
  pressure: 'the tests of 16 CFR 1500.3(c)(7)(i) for explosion, burst and eruption',
};

const rules: Readonly<Record<string, string>> = {
  'diethylene-glycol': 'diethylene glycol',
  'ethylene-glycol': 'ethylene glycol',
  benzene: 'benzene',
  'benzene-10': 'benzene',
  'petroleum-distillates': 'petroleum distillates, toluene and xylene',
  'toluene-xylene': 'toluene and xylene',
  methanol: 'methanol',
  turpentine: 'turpentine',
  phenylenediamine: 'paraphenylenediamine',
  'epoxy-hardeners': 'ethylenediamine or diethylenetriamine',
  formaldehyde: 'formaldehyde',
  bergamot: 'oil of bergamot',
};

const named = (rule: string): string => rules[rule] ?? rule.replaceAll('-', ' ');

function origin(from: Origin): string {
  switch (from.kind) {
    case 'class':
      return `from ${from.code}${from.of ? ` (${from.of})` : ''}`;
    case 'dose':
      return `from the estimate of the mixture, ${show(from.value)} ${from.unit} (${from.route}), at most ${show(from.limit)} ${from.unit}`;
    case 'flash-point':
      return `from a flash point of ${show(Number(from.fahrenheit.toFixed(1)))} °F`;
    case 'composition':
      return `${show(from.percent)} % ${named(from.rule)}${from.limit > 0 ? `, from ${show(from.limit)} %` : ''}`;
  }
}

const reasons: Readonly<Record<string, string>> = {
  inanimate: 'corrosive means destruction of living tissue here, not action on metals',
  'no-class':
    'the law has no such hazard of its own; it may still lie in toxic, flammable or generating pressure',
  designation:
    'a strong sensitizer is what the Commission has designated; the precautions of the class stay on the label',
  environment: 'the law is about injury and illness of people',
  'above-combustible': 'the flash point lies above 150 °F, the end of combustible',
  thick: 'a liquid of at least 100 Saybolt universal seconds at 100 °F is spared the words on aspiration',
};

const listed = (items: readonly string[]): string => items.join(', ');

const conditions: Readonly<Record<string, string>> = {
  household: 'if it is for use in or around the household',
  nonemulsion: 'unless it is an emulsion',
  free: 'if the alkali is free or chemically unneutralized',
  'fhsa-hazardous': 'if it is a hazardous substance of this law',
  'no-spray-alone': 'unless it comes out as a spray alone',
};

function packaging({ cite, outcome, conditions: open, missing }: PackagingFinding, closure: boolean | null) {
  const asks =
    outcome === 'required'
      ? 'child-resistant packaging is called for'
      : 'child-resistant packaging may be called for';
  const told = open.map(condition => conditions[condition] ?? `if ${condition.replaceAll('-', ' ')}`);
  const when = told.length > 0 ? `, ${told.join(', ')}` : '';
  const decides = missing.length > 0 ? `; it depends on ${listed(missing)}` : '';
  const pack =
    closure === null
      ? 'the pack does not say what its closure is: answer `container.child-resistant`'
      : 'the pack says that its closure is not child-resistant';
  return `${asks} (${cite})${when}${decides}; ${pack}`;
}

function open({ what, of, constituents, cite }: OpenHazard, names: (constituent: number) => string): string {
  const by = constituents.length > 0 ? `: ${listed(constituents.map(names))}` : '';
  switch (what) {
    case 'flash-point':
      return `flammability is open without a flash point${by} (${cite})`;
    case 'open-cup':
      return `the flash point is of an open cup; the law goes by a closed cup, which gives less (${cite})`;
    case 'class':
      return `open in the classification, and with it what this law may call a hazard: ${listed(of)}${constituents.length > 0 ? `; for lack of data on ${listed(constituents.map(names))}` : ''} (${cite})`;
    case 'no-cas':
      return `without a CAS number nobody has looked these up among the substances of special labeling${by} (${cite})`;
    case 'epoxy':
      return `in an epoxy resin system it is a strong sensitizer${by} (${cite})`;
  }
}

/** What is said of a label for consumers. */
export const consumer: ConsumerWords = {
  hazard({ kind, from, settledBy, cite }) {
    const how = settledBy.length > 0 ? 'proposed ' : '';
    const data =
      settledBy.length > 0
        ? `; would be settled by ${settledBy.map(id => settling[id] ?? id).join('; ')}`
        : '';
    return `${kinds[kind]}: ${how}${origin(from)} (${cite})${data}`;
  },
  signal: ({ word, cite, proposed }, reason) =>
    proposed
      ? `signal word ${word}, chosen by the maker in place of ${proposed}: ${reason ?? 'without a reason'} (${cite} leaves the choice of WARNING or CAUTION)`
      : `signal word ${word} (${cite})`,
  refusedSignal: ({ set, cite }) =>
    set
      ? `the record chooses a signal word for consumers, and the law sets ${set} (${cite})`
      : 'the record chooses a signal word for consumers, and no hazard of that law is found',
  uncovered: ({ code, why, cite }) =>
    `${why === 'thick' ? named(code) : code} is not stated as a hazard: ${reasons[why] ?? why} (${cite})`,
  open,
  packaging,
  secret: shownAs =>
    shownAs === null
      ? 'the label for consumers must name a constituent that the record claims as a trade secret; the law of the workplace does not reach it'
      : `the label for consumers must name what contributes to the hazard; it prints "${shownAs}" for a constituent claimed as a trade secret, which is enough only where the Commission permits the generic name`,
  noPanel: missing =>
    `the area of the principal display panel, which sets the sizes of type, cannot be worked out: the container lacks ${listed(missing)}`,
  declarationHigh: (millimetres, most) =>
    `the net contents reach ${show(Number(millimetres.toFixed(1)))} mm above the lower edge, more than the lowest 30 % of the panel (${show(Number(most.toFixed(1)))} mm)`,
  declarationCrowded: text => `"${text}" stands nearer to the net contents than their lettering is high`,
};
