import type { Claim } from '../../duties/claim.ts';

const pesticide: Readonly<Record<string, string>> = {
  'pesticide-word': 'the word itself says that pests or germs are killed or kept down',
  'action-on-organism': 'it says that an organism is killed, prevented, kept down or kept away',
  'organism-resistant': 'it says that an organism is kept away',
  'removes-organism':
    'it says that the organism itself is removed, where "removes stains of …" would be a cleaning claim',
  habitat: 'it says that a pest loses its habitat or breeding place',
  'public-health': 'it says that infection or disease is prevented',
  kills: 'what is killed decides',
  'names-organism': 'an organism is named, and the context decides whether the product acts on it',
  hygiene: 'it may imply that germs are killed',
};

const environment: Readonly<Record<string, string>> = {
  'general-benefit': 'a general environmental benefit can hardly be substantiated in all that it conveys',
  carbon: 'reductions of emissions need accounting, and those of later than two years must be told',
  seal: 'a seal that does not say what it rests on conveys a general environmental benefit',
  compostable: 'facilities may not be there for most buyers, or the item not fit for a home pile',
  degradable:
    'the entire item must break down within a reasonably short time where it is customarily disposed of, in landfill within a year',
  'free-of':
    'what is in its place must not pose the same risk, and the substance must be one of this kind of product',
  'non-toxic': 'it conveys that neither people nor the environment nor pets are at risk',
  ozone: 'no ingredient may deplete ozone',
  recyclable: 'collection must be there for at least 60 percent of buyers, for product and package both',
  recycled: 'the share by weight must be said where it is not the whole',
  refillable: 'a way to refill the package must be provided',
  renewable: 'what is renewable, and how much of the item, must be said',
  'source-reduction': 'how much, and less than what, must be said',
};

const origin: Readonly<Record<string, string>> = {
  'us-origin': 'all or virtually all ingredients must be made and sourced in the United States',
  'us-process': 'the step named must be carried out there, and the words must not convey more',
  'us-share': 'the share must be true',
  'other-origin': 'the country must be true',
};

const reasons = { pesticide, environment, origin, safety: {} as Readonly<Record<string, string>> };

const judged: Readonly<Record<Claim['verdict'], Readonly<Partial<Record<Claim['kind'], string>>>>> = {
  claim: { pesticide: 'makes the product a pesticide, which must be registered' },
  ask: { pesticide: 'may make the product a pesticide' },
  unqualified: {
    environment: 'needs a clear qualification beside it, and evidence',
    origin: 'is an unqualified claim of origin',
  },
  substantiate: {
    environment: 'needs evidence',
    origin: 'needs evidence',
    safety: 'needs evidence',
  },
  contradicts: {},
};

/** A claim in words: what is marked, what it makes of the product, and why. */
export function claim({ words, kind, rule, verdict, against }: Claim): string {
  if (verdict === 'contradicts') return `"${words}" contradicts ${against.join(', ')} on the same label`;
  const why = reasons[kind][rule];
  const does = judged[verdict][kind] ?? 'is to be weighed';
  return `"${words}" ${does}${why ? `: ${why}` : ''}`;
}
