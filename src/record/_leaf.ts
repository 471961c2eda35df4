import { readMeasure } from '../quantity/measure.ts';
import { readNumber } from '../quantity/number.ts';
import { misreads, type Reading, reads } from '../quantity/reading.ts';
import type { UnitKind } from '../quantity/units.ts';
import * as z from './_zod.ts';

/** What a schema says of itself for findings; travels as the text of the validator's own message. */
export interface Wanted {
  readonly what: string;
  readonly example?: string;
  readonly keys?: readonly string[];
}

export const told = (wanted: Wanted): string => JSON.stringify(wanted);

/** Reads what `told` wrote; null for a message of the validator's own. */
export function wantedOf(message: string): Wanted | null {
  if (!message.startsWith('{')) return null;
  return JSON.parse(message) as Wanted;
}

/** A scalar that a function reads from its text; numbers are read from their shortest decimal. */
export function leaf<T>(
  read: (text: string) => Reading<T>,
  what: string,
  example: string,
  description: string,
) {
  return z
    .union([z.string(), z.number()], { error: told({ what, example }) })
    .transform((input, context): T => {
      const reading = read(String(input));
      if (reading.ok) return reading.value;
      context.issues.push({
        code: 'custom',
        message: reading.message,
        input,
        params: { hint: reading.hint },
        continue: false,
      });
      return z.NEVER;
    })
    .meta({ description, examples: [example] });
}

const control = /(?![\n\t])[\p{Cc}\ufffe\uffff]/u;

function readText(limit: number, lines: boolean): (text: string) => Reading<string> {
  return written => {
    const text = written.trim().replace(/\r\n/g, '\n');
    if (text === '') return misreads('the text is empty', 'write the text, or remove the key');
    if (control.test(text))
      return misreads('the text holds a character that cannot be printed', 'type the text anew');
    if (!lines && /[\n\t]/.test(text))
      return misreads('the text runs over several lines', 'write it in one line');
    if (text.length > limit) return misreads(`the text has ${text.length} characters; ${limit} are possible`);
    return reads(text);
  };
}

/** One line of text. */
export const line = (example: string, description: string, limit = 500) =>
  leaf(readText(limit, false), 'a text', example, description);

/** Text that may run over several lines. */
export const prose = (example: string, description: string) =>
  leaf(readText(20_000, true), 'a text', example, description);

export const number = (example: string, description: string) =>
  leaf(readNumber, 'a number', example, description);

export const measure = (kinds: readonly [UnitKind, ...UnitKind[]], example: string, description: string) =>
  leaf(text => readMeasure(text, ...kinds), 'a number with its unit', example, description);

/** A length in mm, more than nothing. */
export const millimetres = (example: string, description: string) =>
  leaf(
    text => {
      const length = readMeasure(text, 'length');
      if (!length.ok) return length;
      if (length.value.base.value <= 0)
        return misreads(`\`${text}\` is not a length`, 'give a length above 0');
      return reads(length.value.base.value);
    },
    'a length with its unit',
    example,
    description,
  );

export const truth = (description: string) =>
  z.boolean({ error: told({ what: 'true or false', example: 'true' }) }).meta({ description });

export const oneOf = <const T extends readonly [string, ...string[]]>(values: T, description: string) =>
  z
    .enum(values, { error: told({ what: `one of ${values.join(', ')}`, example: values[0], keys: values }) })
    .meta({ description });

/** A mapping with these keys and no others. */
export function mapping<S extends z.ZodRawShape>(shape: S, description: string, what = 'a group of keys') {
  return z
    .strictObject(shape, { error: () => told({ what, keys: Object.keys(shape) }) })
    .meta({ description });
}

export const list = <T extends z.ZodType>(item: T, example: string, description: string) =>
  z.array(item, { error: told({ what: 'a list', example }) }).meta({ description });

/** A value with what is known of its measurement. */
export interface MeasuredInput<V> {
  readonly value: V;
  readonly method: string | null;
  readonly source: string | null;
}

/** A value, or the value with the method and source of its measurement. */
export const measured = <T extends z.ZodType>(value: T): z.ZodType<MeasuredInput<z.output<T>>> =>
  z
    .union([
      value.transform(inner => ({ value: inner, method: null, source: null })),
      mapping(
        {
          value,
          method: line('ASTM D56', 'Method of the measurement').optional(),
          source: line('own laboratory, 2026-02-11', 'Where the value is from').optional(),
        },
        'The value with its method and source',
      ).transform(written => {
        const {
          value: inner,
          method,
          source,
        } = written as { value: z.output<T>; method?: string; source?: string };
        return { value: inner, method: method ?? null, source: source ?? null };
      }),
    ])
    .meta(z.globalRegistry.get(value) ?? {}) as z.ZodType<MeasuredInput<z.output<T>>>;
