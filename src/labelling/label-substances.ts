import data from '../../hazard-data/eu-clp/sheet/label-substances.json' with { type: 'json' };
import type { Classification } from '../classify/classification.ts';
import { namedIn } from '../classify/facts/figure.ts';

/** Which substances the product identifier of a mixture names beside its name. */
export interface LabelSubstances {
  /** A class of the article is classified. */
  readonly due: boolean;
  /** Places of constituents that contribute to those classes, in the order of the formula; water is none. */
  readonly constituents: readonly number[];
  /**
   * Where a class rests on the mixture as a whole, which names no substance: those that are in the class by themselves.
   * Whether they cause it is for a person to say.
   */
  readonly proposed: readonly number[];
  /** How many names suffice as a rule. */
  readonly names: number;
  readonly cite: string;
}

const classes = new Set(data.classes.map(each => each.class));

/** What corrodes skin damages eyes, and the pH of a mixture speaks of both (CLP Annex I, 3.2.1 and 3.3.1). */
const CORROSIVE = ['Skin Corr.', 'Eye Dam.'];

const kin = (hazardClass: string): readonly string[] =>
  CORROSIVE.includes(hazardClass) ? CORROSIVE : [hazardClass];

/** Substances that contribute to the classification for the classes of CLP, Article 18(3)(b): all of them. */
export function labelSubstances({
  hazards,
  constituents,
}: Pick<Classification, 'hazards' | 'constituents'>): LabelSubstances {
  const counting = hazards.filter(({ hazardClass }) => classes.has(hazardClass));
  const named = counting.map(({ hazardClass, because }) => ({
    hazardClass,
    places: namedIn(because)?.map(({ constituent }) => constituent) ?? [],
  }));
  const places = new Set(named.flatMap(each => each.places));
  const whole = new Set(
    named.filter(each => each.places.length === 0).flatMap(({ hazardClass }) => kin(hazardClass)),
  );
  const dry = constituents.flatMap((each, at) => (each.water ? [] : [{ ...each, at }]));
  return {
    due: counting.length > 0,
    constituents: dry.filter(({ at }) => places.has(at)).map(({ at }) => at),
    proposed: dry
      .filter(({ at, data: own }) => !places.has(at) && own.hazards.some(each => whole.has(each.hazardClass)))
      .map(({ at }) => at),
    names: data.names,
    cite: 'CLP Article 18(3)(b)',
  };
}
