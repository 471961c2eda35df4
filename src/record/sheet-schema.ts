import { dateLeaf } from './_date.ts';
import { ecLeaf, registrationLeaf } from './_european.ts';
import { described, line, list, mapping, prose, told, truth } from './_leaf.ts';
import * as z from './_zod.ts';
import { sheetTexts } from './sheet-keys.ts';

/** A text for the sheet, or by whom and where it was searched for and not found. */
export type SheetTextInput = string | { readonly searched: string };

const searched = mapping(
  { searched: line('supplier sheets and the substance register, 2026-03-02', 'By whom and where', 500) },
  'Searched for and not found',
);

const text = (description: string): z.ZodMiniType<SheetTextInput> =>
  described(
    z.union([prose('…', description), searched], {
      error: told({ what: 'a text, or a group with `searched`', example: '…' }),
    }),
    { description: `${description}; or {searched: by whom and where} where nothing was found` },
  );

const shape: Record<string, z.ZodMiniType> = {};
const groups = new Map<string, Record<string, z.ZodMiniType>>();
for (const [key, description] of Object.entries(sheetTexts)) {
  const [group, member] = key.split('.') as [string, string | undefined];
  const each = z.optional(text(description));
  if (member === undefined) shape[group] = each;
  else groups.set(group, { ...groups.get(group), [member]: each });
}
for (const [group, members] of groups) shape[group] = z.optional(mapping(members, `Texts on ${group}`));

const about = (description: string) => z.optional(prose('…', description));

const ingredients = list(
  mapping(
    {
      of: line('141-43-5', 'CAS number or name of a constituent', 200),
      limits: z.optional(
        list(
          mapping(
            {
              list: line('TLV-TWA', 'Name of the limit', 100),
              value: line('3 ppm', 'Its value with its unit', 100),
              date: z.optional(dateLeaf('Date of the list, year-month-day')),
              union: z.optional(
                truth('true: a workplace limit of the Union, for which an EU sheet lists the ingredient'),
              ),
            },
            'An exposure limit',
          ),
          '[{list: TLV-TWA, value: 3 ppm}]',
          'Section 8: exposure limits beside those of OSHA',
        ),
      ),
      ec: z.optional(ecLeaf),
      registration: z.optional(registrationLeaf),
      pbt: about('Sections 2, 3 and 12 of an EU sheet: why it is PBT, vPvB, PMT or vPvM'),
      endocrine: about('Sections 2, 3, 11 and 12 of an EU sheet: why it is an endocrine disruptor'),
      'candidate-list': about('Sections 3 and 15 of an EU sheet: why it is on the list of Article 59(1)'),
      synonyms: z.optional(list(line('MEA', 'A synonym', 200), '[MEA]', 'Section 3: synonyms')),
      impurities: about('Section 3: impurities and stabilizers that are classified themselves'),
      toxicity: about('Section 11: toxicity figures'),
      ecotoxicity: about('Section 12: ecotoxicity figures'),
      persistence: about('Section 12: persistence and degradability'),
      bioaccumulation: about('Section 12: bioaccumulative potential'),
      mobility: about('Section 12: mobility in soil'),
      source: z.optional(line('supplier SDS, revision 3, 2026-02-11', 'Where these data are from')),
      list: z.optional(truth('true: listed in section 3 also below its cut-off')),
    },
    'What the sheet needs of one ingredient',
  ),
  '[{of: 141-43-5, limits: [{list: TLV-TWA, value: 3 ppm}]}]',
  'What the sheet needs of single ingredients',
);

export type SheetIngredientsInput = z.output<typeof ingredients>;

/** The texts of a sheet as validated: by key, or by group and key. */
export type SheetInput = Readonly<
  Record<string, SheetTextInput | Readonly<Record<string, SheetTextInput>>>
> & {
  readonly ingredients?: SheetIngredientsInput;
};

/** The same texts in another language. */
export const sheetTextsSchema = mapping(
  shape,
  'Texts for sections of the data sheet in another language, under the keys of `sds`',
) as unknown as z.ZodMiniType<SheetInput>;

/** Texts for sections of the data sheet that no calculation gives. */
export const sheetSchema = mapping(
  { ...shape, ingredients: z.optional(ingredients) },
  'Texts for sections of the data sheet that no calculation gives',
) as unknown as z.ZodMiniType<SheetInput>;
