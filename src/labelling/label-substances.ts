import data from '../../hazard-data/eu-clp/sheet/label-substances.json' with { type: 'json' };
import type { Classification } from '../classify/classification.ts';
import { namedIn } from '../classify/facts/figure.ts';

/** Which substances the product identifier of a mixture names beside its name. */
export interface LabelSubstances {
  /** A class of the article is classified. */
  readonly due: boolean;
  /** Places of constituents that contribute to those classes, in the order of the formula; water is none. */
  readonly constituents: readonly number[];
  /** How many names suffice as a rule. */
  readonly names: number;
  readonly cite: string;
}

const classes = new Set(data.classes.map(each => each.class));

/** Substances that contribute to the classification for the classes of CLP, Article 18(3)(b): all of them. */
export function labelSubstances({
  hazards,
  constituents,
}: Pick<Classification, 'hazards' | 'constituents'>): LabelSubstances {
  const counting = hazards.filter(({ hazardClass }) => classes.has(hazardClass));
  const places = new Set(
    counting.flatMap(({ because }) => namedIn(because)?.map(({ constituent }) => constituent) ?? []),
  );
  return {
    due: counting.length > 0,
    constituents: constituents.flatMap(({ water }, at) => (places.has(at) && !water ? [at] : [])),
    names: data.names,
    cite: 'CLP Article 18(3)(b)',
  };
}
