import type { LabelPurpose } from '../../labelling/purposes.ts';
import { euSupply } from './eu-supply.ts';
import type { Purpose } from './purpose.ts';
import { tank } from './tank.ts';
import { usConsumer } from './us-consumer.ts';
import { usWorkplace } from './us-workplace.ts';

/** The purposes for which a label is drafted, the usual one first. */
export const purposes: readonly Purpose[] = [usWorkplace, usConsumer, euSupply, tank];

/** A purpose by its id. */
export const purposeOf = (id: LabelPurpose): Purpose => purposes.find(purpose => purpose.id === id)!;
