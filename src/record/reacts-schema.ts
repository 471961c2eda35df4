import type { Measure } from '../quantity/measure.ts';
import { readNumber } from '../quantity/number.ts';
import { misreads } from '../quantity/reading.ts';
import { molarMassLeaf } from './_amounts.ts';
import { readCas } from './_cas.ts';
import { across } from './_cross.ts';
import { leaf, line, list, mapping } from './_leaf.ts';
import * as z from './_zod.ts';
import { givenShape } from './given-schema.ts';

const moles = leaf(
  text => {
    const number = readNumber(text);
    return number.ok && number.value.value <= 0
      ? misreads(`\`${text}\` is not a number of moles`, 'write how many react together, such as 3')
      : number;
  },
  'a number',
  '1',
  'Moles that react together',
);

/** Molar masses are printed with two decimals; reactants and products weigh the same within this part. */
const TOLERANCE = 0.002;

interface Share {
  readonly moles: { readonly value: number };
  readonly 'molar-mass': Measure;
}

const massOf = (shares: unknown): number | null => {
  if (!Array.isArray(shares)) return null;
  let sum = 0;
  for (const share of shares as Partial<Share>[]) {
    const [count, mass] = [share?.moles?.value, share?.['molar-mass']?.base?.value];
    if (typeof count !== 'number' || typeof mass !== 'number') return null;
    sum += count * mass;
  }
  return sum;
};

/** Reactions that run to their end in the batch. */
export const reactsSchema = list(
  across(
    mapping(
      {
        consumes: list(
          mapping(
            {
              of: line('77-92-9', 'CAS number or name of a constituent of the formula', 200),
              moles,
              'molar-mass': molarMassLeaf,
            },
            'A constituent that the reaction uses up',
          ),
          '[{of: 77-92-9, moles: 1, molar-mass: 192.12 g/mol}]',
          'What reacts',
        ).check(z.minLength(2)),
        forms: list(
          mapping(
            {
              name: line('trisodium citrate', 'Name of what forms', 200),
              cas: z.optional(leaf(readCas, 'a CAS number', '68-04-2', 'CAS number')),
              moles,
              'molar-mass': molarMassLeaf,
              ...givenShape,
            },
            'What forms; water counts',
          ),
          '[{name: trisodium citrate, cas: 68-04-2, moles: 1, molar-mass: 258.07 g/mol}]',
          'What forms, water too',
        ).check(z.minLength(1)),
        source: z.optional(line('titration of batch 26-114', 'How it is known')),
      },
      'Acid and base, or the like, that react in the batch: what remains is classified',
    ),
    ({ consumes, forms }, complain) => {
      const [before, after] = [massOf(consumes), massOf(forms)];
      if (before === null || after === null || Math.abs(before - after) <= TOLERANCE * before) return;
      complain(
        ['forms'],
        `what forms weighs ${after.toFixed(2)} g, and what reacts ${before.toFixed(2)} g`,
        'a reaction loses no mass: check the moles and molar masses, and that water is named',
      );
    },
  ),
  '[]',
  'Acid and base (or the like) that form a salt in the batch',
);

export type ReactsInput = z.output<typeof reactsSchema>;
