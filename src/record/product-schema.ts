import { batchLeaf } from './_amounts.ts';
import { across } from './_cross.ts';
import { dateLeaf } from './_date.ts';
import { ufiLeaf } from './_european.ts';
import { either, line, list, mapping, oneOf, prose, recordKind } from './_leaf.ts';
import * as z from './_zod.ts';
import { artworkSchema } from './brand-schema.ts';
import { choicesSchema, evidenceSchema } from './evidence-schema.ts';
import { formulaSchema } from './formula-schema.ts';
import { makerSchema } from './maker-schema.ts';
import { fileNamePart, packSchema } from './pack-schema.ts';
import { propertiesSchema } from './properties-schema.ts';
import { reactsSchema } from './reacts-schema.ts';
import { reviewSchema } from './review-schema.ts';
import { revisionsSchema, wholeRevisions } from './revisions-schema.ts';
import { sheetSchema } from './sheet-schema.ts';
import { soldToSchema } from './sold-to-schema.ts';
import { statementsSchema } from './statements-schema.ts';
import { languageSchema, translationsSchema, wholeTranslations } from './translations-schema.ts';
import { vocSchema } from './voc-schema.ts';

/** A product record. */
export const productSchema = across(
  mapping(
    {
      labelwright: recordKind('product/1'),
      name: line('Kerbstone Patio Cleaner', 'Product identifier, the same on label and data sheet', 200),
      code: fileNamePart('code', 'KP-946', 'Product code; names the output folder'),
      ufi: z.optional(ufiLeaf),
      use: z.optional(
        line('Cleaner for outdoor stone and concrete', 'Recommended use; a label and a data sheet need it'),
      ),
      'advised-against': z.optional(
        list(
          line('Do not use on aluminum', 'A use advised against'),
          '[Do not use on aluminum]',
          'Uses advised against',
        ),
      ),
      form: oneOf(
        ['liquid', 'solid', 'gas', 'aerosol'],
        'Physical form; percentages are by volume where it is gas',
      ),
      appearance: z.optional(
        mapping(
          {
            color: z.optional(line('pale yellow', 'Color')),
            odor: z.optional(line('chlorine', 'Odor')),
            'physical-state': z.optional(
              line('clear liquid', 'Physical state, where it says more than the form'),
            ),
          },
          'Appearance',
        ),
      ),
      maker: z.optional(
        either(
          [line('maker.yaml', 'Path of a maker record, relative to this file'), makerSchema],
          'the path of a maker record, or the maker written out',
          'maker.yaml',
          'The maker: path of a maker record, or the maker written out; a label and a data sheet need it',
        ),
      ),
      properties: z.optional(propertiesSchema),
      formula: formulaSchema,
      batch: z.optional(batchLeaf),
      reacts: z.optional(reactsSchema),
      'sold-to': z.optional(soldToSchema),
      voc: z.optional(vocSchema),
      statements: z.optional(statementsSchema),
      evidence: z.optional(evidenceSchema),
      choices: z.optional(choicesSchema),
      packs: z.optional(
        list(packSchema, '[{id: bottle-946, contents: 946 mL}]', 'Packs in which the product is sold'),
      ),
      copy: z.optional(
        mapping(
          {
            tagline: z.optional(line('Lifts grime and traffic film from stone', 'A line of the maker')),
            directions: z.optional(
              list(
                prose('Wet the surface.', 'A step of the directions'),
                '[Wet the surface., Rinse well.]',
                'Directions for use',
              ),
            ),
            origin: z.optional(line('Made in USA', 'Where it is made', 200)),
            note: z.optional(prose('…', 'A line of the maker that stands apart')),
            artwork: z.optional(artworkSchema),
          },
          "The maker's own words for the label; screened, never rewritten",
        ),
      ),
      revision: z.optional(line('3', 'Revision of the record', 60)),
      revised: z.optional(dateLeaf('Date of the revision, year-month-day')),
      revisions: z.optional(revisionsSchema),
      review: z.optional(reviewSchema),
      sds: z.optional(sheetSchema),
      language: z.optional(languageSchema),
      translations: z.optional(translationsSchema),
    },
    'A product record',
    'a product record',
  ),
  ({ packs, ...rest }, complain) => {
    wholeRevisions(rest, complain);
    wholeTranslations(rest, complain);
    if (!Array.isArray(packs)) return;
    const seen = new Map<unknown, number>();
    const numbers = new Map<string, string>();
    packs.forEach((pack: { id?: unknown; gtin?: unknown; case?: { gtin?: unknown } } | null, index) => {
      const id = pack?.id;
      for (const [number, what, path] of [
        [pack?.gtin, 'pack', ['gtin']],
        [pack?.case?.gtin, 'case', ['case', 'gtin']],
      ] as const) {
        if (typeof number !== 'string') continue;
        const before = numbers.get(number.padStart(14, '0'));
        if (before !== undefined)
          complain(
            ['packs', index, ...path],
            `GTIN \`${number}\` is also that of ${before}`,
            'each pack and each case has a number of its own',
          );
        else numbers.set(number.padStart(14, '0'), `the ${what} ${what === 'case' ? 'of ' : ''}\`${id}\``);
      }
      if (typeof id !== 'string') return;
      if (seen.has(id))
        complain(['packs', index, 'id'], `two packs are called \`${id}\``, 'give each pack an id of its own');
      else seen.set(id, index);
    });
  },
);

export type ProductInput = z.output<typeof productSchema>;
