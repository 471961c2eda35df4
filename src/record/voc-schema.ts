import table from '../../hazard-data/us-epa/voc-categories.json' with { type: 'json' };
import { line, list, mapping, oneOf } from './_leaf.ts';
import * as z from './_zod.ts';

/** What the record says of volatile organic compounds. */
export const vocSchema = mapping(
  {
    category: z.optional(
      oneOf(
        ['none', ...table.categories.map(({ id }) => id)] as [string, ...string[]],
        'Product category of 40 CFR 59 Subpart C, Table 1; `none` where none fits',
      ),
    ),
    counted: z.optional(
      list(
        mapping(
          {
            of: line('hydrotreated light distillates', 'Name or CAS number of a constituent', 200),
            as: oneOf(
              ['voc', 'low-vapor-pressure', 'exempt', 'not-organic', 'fragrance'],
              'How it counts: as a VOC, or why it does not',
            ),
            source: line('supplier SDS: 0.03 mmHg at 20 C', 'Where that is said', 200),
          },
          'How a constituent counts, with its source',
          'a group with `of`, `as` and `source`',
        ),
        '[{of: 64742-47-8, as: low-vapor-pressure, source: supplier SDS}]',
        'Constituents that the tables do not know, or that count otherwise',
      ),
    ),
  },
  'Volatile organic compounds: product category, and constituents that the tables do not know',
  'a group with `category` and `counted`',
);
