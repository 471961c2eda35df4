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
    'eu-supplier': z.optional(
      mapping(
        {
          name: line('Example Import GmbH', 'Name of the supplier', 200),
          role: z.optional(line('importer', 'What it is: importer, only representative, distributor', 60)),
          address: list(
            line('Musterweg 1', 'A line of the address'),
            '[Musterweg 1, 10115 Berlin, Germany]',
            'Postal address, a line each',
          ).check(z.minLength(1)),
          telephone: telephone('+49 30 555 0100', 'Telephone'),
          email: z.optional(
            line('sds@import.example', 'Mail of the competent person for the data sheet', 200),
          ),
          emergency: z.optional(
            list(
              mapping(
                {
                  body: line('National poisons centre', 'Who answers', 200),
                  country: z.optional(line('Germany', 'Member State that it serves', 100)),
                  telephone: telephone('+49 30 555 0199', 'Emergency telephone'),
                  hours: line('24 hours', 'Hours at which it is answered, and other limits', 200),
                },
                'An emergency information service or official advisory body',
              ),
              '[{body: National poisons centre, country: Germany, telephone: +49 30 555 0199, hours: 24 hours}]',
              'Section 1.4 of an EU sheet: emergency information services and official advisory bodies',
            ),
          ),
        },
        'Supplier in the European Union: sections 1.3 and 1.4 of an EU sheet, and an EU label',
      ),
    ),
    brand: z.optional(brandSchema),
    press: z.optional(pressSchema),
    website: z.optional(line('kerbstone.example', 'Website', 200)),
  },
  'The maker of the product',
  'the path of a maker record, or the maker written out',
);

export type MakerInput = z.output<typeof makerSchema>;
