import { languages } from '../notation/languages.ts';
import { converted, either, list, mapping, oneOf } from './_leaf.ts';
import * as z from './_zod.ts';

/** States and the District of Columbia by the letters of the postal service. */
const STATES = [
  ...([
    'AK',
    'AL',
    'AR',
    'AZ',
    'CA',
    'CO',
    'CT',
    'DC',
    'DE',
    'FL',
    'GA',
    'HI',
    'IA',
    'ID',
    'IL',
    'IN',
    'KS',
  ] as const),
  ...([
    'KY',
    'LA',
    'MA',
    'MD',
    'ME',
    'MI',
    'MN',
    'MO',
    'MS',
    'MT',
    'NC',
    'ND',
    'NE',
    'NH',
    'NJ',
    'NM',
    'NV',
  ] as const),
  ...([
    'NY',
    'OH',
    'OK',
    'OR',
    'PA',
    'RI',
    'SC',
    'SD',
    'TN',
    'TX',
    'UT',
    'VA',
    'VT',
    'WA',
    'WI',
    'WV',
    'WY',
  ] as const),
] as const;

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
    states: z.optional(
      list(
        oneOf(STATES, 'A state of the United States in two letters'),
        '[CA, MD]',
        'States of the United States where it is sold, in two letters: whose limits of volatile organic compounds apply',
      ).check(z.minLength(1)),
    ),
  },
  'Who buys the product, and where: decides which labels are due',
  'a group with `users`, `markets` and, if wanted, `states` and `languages`',
  '{users: [workplace, consumers], markets: [us]}',
);
