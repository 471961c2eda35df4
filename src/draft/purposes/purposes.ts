import type { LabelPurpose } from '../../labelling/purposes.ts';
import type { Purpose } from './purpose.ts';
import { usConsumer } from './us-consumer.ts';
import { usWorkplace } from './us-workplace.ts';

/** The purposes for which a label is drafted, the usual one first. */
export const purposes: readonly Purpose[] = [usWorkplace, usConsumer];

/** A purpose by its id; null where its label is not drafted yet. */
export const purposeOf = (id: LabelPurpose): Purpose | null =>
  purposes.find(purpose => purpose.id === id) ?? null;
