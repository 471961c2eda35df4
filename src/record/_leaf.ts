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
  /** The fix, where an example would not tell it. */
  readonly hint?: string;
}

export const told = (wanted: Wanted): string => JSON.stringify(wanted);

/** Reads what `told` wrote; null for a message of the validator's own. */
export function wantedOf(message: string): Wanted | null {
  if (!message.startsWith('{')) return null;
  return JSON.parse(message) as Wanted;
}

/** A schema with what the JSON Schema says of it. */
export function described<T extends z.ZodMiniType>(schema: T, meta: z.core.GlobalMeta): T {
  z.globalRegistry.add(schema, meta);
  return schema;
}

/** A scalar that a function reads from its text; numbers are read from their shortest decimal. */
export function leaf<T>(
  read: (text: string) => Reading<T>,
  what: string,
  example: string,
  description: string,
): z.ZodMiniType<T> {
  // One schema for both types and the reading: a record has hundreds of leaves, and each schema costs at start.
  const scalar = z.transform((input, { issues }): T => {
    if (typeof input !== 'string' && typeof input !== 'number') {
      issues.push({ code: 'invalid_type', expected: 'string', message: told({ what, example }), input });
      return z.NEVER;
    }
    const reading = read(String(input));
    if (reading.ok) return reading.value;
    const { message, hint, code } = reading;
    issues.push({ code: 'custom', message, input, params: { hint, code }, continue: false });
    return z.NEVER;
  });
  return described(scalar, { type: ['string', 'number'], description, examples: [example] });
}

/** What a leaf gives, turned into another form; it is written in the same way. */
export function converted<A, B>(schema: z.ZodMiniType<A>, convert: (value: A) => B) {
  const pipe = z.pipe(schema, z.transform(convert));
  return described(pipe, z.globalRegistry.get(schema) ?? {});
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

/** Nothing about a pack, a roll or a case is longer. */
const MAX_MILLIMETRES = 10_000;

/** A length in mm, more than nothing and at most 10 m. */
export const millimetres = (example: string, description: string) =>
  leaf(
    text => {
      const length = readMeasure(text, 'length');
      if (!length.ok) return length;
      if (length.value.base.value <= 0)
        return misreads(`\`${text}\` is not a length`, 'give a length above 0');
      if (length.value.base.value > MAX_MILLIMETRES)
        return misreads(`\`${text}\` is longer than ${MAX_MILLIMETRES / 1000} m`, 'check the unit');
      return reads(length.value.base.value);
    },
    'a length with its unit',
    example,
    description,
  );

export const truth = (description: string) =>
  described(z.boolean({ error: told({ what: 'true or false', example: 'true' }) }), { description });

export const oneOf = <const T extends readonly [string, ...string[]]>(values: T, description: string) =>
  described(
    z.enum(values, {
      error: told({ what: `one of ${values.join(', ')}`, example: values[0], keys: values }),
    }),
    { description },
  );

/** The key that says what a file holds. */
export const recordKind = <const K extends string>(kind: K) =>
  described(z.literal(kind), { description: 'Kind of record' });

/** A mapping with these keys and no others. */
export const mapping = <S extends z.core.$ZodShape>(
  shape: S,
  description: string,
  what = 'a group of keys',
  example?: string,
) =>
  described(z.strictObject(shape, { error: () => told({ what, example, keys: Object.keys(shape) }) }), {
    description,
  });

/** @param hint the fix for what somebody wrote in place of a list, where an example would not tell it */
export const list = <T extends z.ZodMiniType>(
  item: T,
  example: string,
  description: string,
  hint: (written: unknown) => string | undefined = () => undefined,
) =>
  described(z.array(item, { error: ({ input }) => told({ what: 'a list', example, hint: hint(input) }) }), {
    description,
  });

/** One of two ways to write a value. */
export const either = <A extends z.ZodMiniType, B extends z.ZodMiniType>(
  options: readonly [A, B],
  what: string,
  example: string,
  description: string,
) => described(z.union(options, { error: told({ what, example }) }), { description });
