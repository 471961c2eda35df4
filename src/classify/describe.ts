import type { Constituent } from '../formula/constituent.ts';
import type { ClassifiedConstituent } from './classification.ts';
import type { Resolved } from './resolve.ts';

/** A constituent as it was classified. */
export const describeConstituent = (
  { name, cas, low, high, water, given: { additive, relevant } }: Constituent,
  { data }: Resolved,
): ClassifiedConstituent => ({ name, cas, low, high, data, additive, relevant, water });
