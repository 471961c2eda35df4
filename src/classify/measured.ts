import type { Exact } from '../quantity/exact.ts';
import type { FlashPoint, Measured } from '../record/product-record.ts';
import type { Measurement } from './facts/reason-base.ts';

/** A measured property as a fact. */
export const measurementOf = ({ value, method, source }: Measured<Exact>): Measurement => ({
  value,
  method,
  source,
});

/** A measured flash point as a fact. */
export const flashMeasurement = (
  { method, source }: Measured<FlashPoint>,
  { celsius, cup }: Extract<FlashPoint, { kind: 'temperature' }>,
): Measurement => ({ value: celsius, method, source, cup });
