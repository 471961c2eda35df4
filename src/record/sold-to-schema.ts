import { languages } from '../notation/languages.ts';
import { converted, either, list, mapping, oneOf } from './_leaf.ts';
import * as z from './_zod.ts';

const oneOrMore = <const T extends readonly [string, ...string[]]>(
  values: T,
  example: string,
  description: string,
) => {
  const word = oneOf(values, description);
  return either(
    [
      converted(word as z.ZodMiniType<T[number]>, (value): readonly T[number][] => [value]),
      list(word as z.ZodMiniType<T[number]>, example, description).check(z.minLength(1)),
    ],
    `${values.join(', ')}, or a list of them`,
    example,
    description,
  );
};

/** Who buys the product, and where. */
export const soldToSchema = mapping(
  {
    users: oneOrMore(
      ['workplace', 'consumers'],
      '[workplace, consumers]',
      'Who buys it: workplace, consumers or both',
    ),
    markets: oneOrMore(['us', 'eu'], '[us]', 'Where it is sold: us, eu or both'),
    languages: z.optional(
      oneOrMore(
        languages,
        '[en, es]',
        'Languages of labels and sheets in the packet; English is always among them',
      ),
    ),
  },
  'Who buys the product, and where: decides which labels are due',
  'a group with `users` and `markets`',
  '{users: [workplace, consumers], markets: [us]}',
);
