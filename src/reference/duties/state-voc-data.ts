import data from '../../../hazard-data/us-state/voc-limits.json' with { type: 'json' };

/** Limits of one state, in percent by weight, by the id of the product category. */
export interface StateVocLimits {
  readonly title: string;
  readonly cite: string;
  /** What was read, and what was not. */
  readonly source: string;
  readonly categories: readonly { readonly id: string; readonly percent: number }[];
}

const states: Readonly<Record<string, StateVocLimits>> = data.states;

/** Limits of a state by its two letters; null where none are held, which does not mean that it has none. */
export const stateVocLimits = (state: string): StateVocLimits | null => states[state] ?? null;
