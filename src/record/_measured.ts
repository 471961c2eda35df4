import type { Exact } from '../quantity/exact.ts';
import { converted, described, either, line, mapping, told } from './_leaf.ts';
import { percent } from './_percent.ts';
import * as z from './_zod.ts';

/** A value with what is known of its measurement. */
export interface MeasuredInput<V> {
  readonly value: V;
  readonly method: string | null;
  readonly source: string | null;
  readonly measuredOn: string | null;
  /** Constituents that bear on it, with their percents in the formula that was measured. */
  readonly measuredFormula?: readonly MeasuredPart[];
}

/** A constituent of the formula that was measured, by name or CAS number. */
export interface MeasuredPart {
  readonly name: string;
  readonly low: Exact;
  readonly high: Exact;
}

const method = z.optional(line('ASTM D56', 'Method of the measurement'));
const source = z.optional(line('own laboratory, 2026-02-11', 'Where the value is from'));
const version = line(
  'revision 3',
  'Revision or day of the formula that was measured; a later one may differ',
  60,
);
const parts = described(
  z.record(z.string(), percent, {
    error: told({
      what: 'a revision, a day, or the constituents with their percents',
      example: '{64-17-5: 40, 7732-18-5: 58}',
    }),
  }),
  { description: 'Constituents of the formula that was measured, with their percents; `check` writes them' },
);

type MeasuredOnInput = Pick<MeasuredInput<unknown>, 'measuredOn' | 'measuredFormula'>;

const measuredOn: z.ZodMiniType<MeasuredOnInput> = either(
  [
    converted(version, (written): MeasuredOnInput => ({ measuredOn: written })),
    converted(
      parts,
      (given): MeasuredOnInput => ({
        measuredOn: null,
        measuredFormula: Object.entries(given).map(([name, { low, high }]) => ({ name, low, high })),
      }),
    ),
  ],
  'a revision, a day, or the constituents with their percents',
  'revision 3',
  'The formula that was measured; a later formula may differ',
);

interface Written<V> {
  readonly value: V;
  readonly method?: string | undefined;
  readonly source?: string | undefined;
  readonly 'measured-on'?: MeasuredOnInput | undefined;
}

/** A value, or the value with the method and source of its measurement. */
export function measured<V>(value: z.ZodMiniType<V>): z.ZodMiniType<MeasuredInput<V>> {
  const { description, examples } = z.globalRegistry.get(value) ?? {};
  const alone = converted(
    value,
    (inner): MeasuredInput<V> => ({
      value: inner,
      method: null,
      source: null,
      measuredOn: null,
    }),
  );
  const group: z.ZodMiniType<Written<V>> = mapping(
    { value, method, source, 'measured-on': z.optional(measuredOn) },
    'The value with its method and source',
  );
  const withSource = converted(
    group,
    (written): MeasuredInput<V> => ({
      value: written.value,
      method: written.method ?? null,
      source: written.source ?? null,
      measuredOn: written['measured-on']?.measuredOn ?? null,
      ...(written['measured-on']?.measuredFormula && {
        measuredFormula: written['measured-on'].measuredFormula,
      }),
    }),
  );
  return described(z.union([alone, withSource]), { description, examples });
}
