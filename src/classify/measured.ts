import type { Exact } from '../quantity/exact.ts';
import type { FlashPoint, Measured } from '../record/product-record.ts';
import type { Measurement } from './facts/reason-base.ts';

/** A measured property as a fact. */
export const measurementOf = ({ value, method, source, bound }: Measured<Exact>): Measurement => ({
  value,
  method,
  source,
  ...(bound && { bound }),
});

/** A measured flash point as a fact. */
export const flashMeasurement = (
  { method, source, bound }: Measured<FlashPoint>,
  { celsius, cup }: Extract<FlashPoint, { kind: 'temperature' }>,
): Measurement => ({ value: celsius, method, source, cup, ...(bound && { bound }) });
