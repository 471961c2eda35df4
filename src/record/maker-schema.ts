import { converted, either, line, list, mapping, recordKind } from './_leaf.ts';
import * as z from './_zod.ts';
import { brandSchema } from './brand-schema.ts';
import { pressSchema } from './print-schema.ts';

const telephone = (example: string, description: string) => line(example, description, 60);

/** The maker of the product: name, address and telephones of label and data sheet. */
export const makerSchema = mapping(
  {
    labelwright: z.optional(recordKind('maker/1')),
    name: line('Kerbstone Products LLC', 'Name of the maker or responsible party', 200),
    address: either(
      [
        converted(line('12 Quarry Lane, Springfield, OH 45500', 'Postal address in one line'), text => [
          text,
        ]),
        list(
          line('12 Quarry Lane', 'A line of the address'),
          '[12 Quarry Lane, Springfield OH 45500]',
          'Postal address, a line each',
        ).check(z.minLength(1)),
      ],
      'a text, or a list of lines',
      '[12 Quarry Lane, Springfield OH 45500]',
      'Postal address: one line, or a list of lines',
    ),
    telephone: telephone('+1 555 0100', 'Telephone'),
    emergency: mapping(
      {
        telephone: telephone('+1 555 0199', 'Emergency telephone'),
        hours: line('24 hours', 'Hours at which it is answered', 200),
      },
      'Emergency telephone and its hours',
      'a group with `telephone` and `hours`',
    ),
    email: z.optional(line('sds@kerbstone.example', 'Electronic mail', 200)),
    brand: z.optional(brandSchema),
    press: z.optional(pressSchema),
    website: z.optional(line('kerbstone.example', 'Website', 200)),
  },
  'The maker of the product',
  'the path of a maker record, or the maker written out',
);

export type MakerInput = z.output<typeof makerSchema>;
