import type { Outcome } from './answer.ts';
import type { Fact } from './fact.ts';

/** Not decided, with what stands in the way. */
export const undecided = (...because: readonly Fact[]): Outcome => ({
  answer: 'undecided',
  entry: null,
  name: null,
  technical: [],
  class: null,
  subsidiary: [],
  packingGroup: null,
  because,
});

/** Not subject, with the reason. */
export const notRegulated = (...because: readonly Fact[]): Outcome => ({
  ...undecided(...because),
  answer: 'not-regulated',
});
