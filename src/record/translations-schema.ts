import { languages, type OtherLanguage, otherLanguages } from '../notation/languages.ts';
import type { Partly } from './_cross.ts';
import { line, list, mapping, oneOf, prose } from './_leaf.ts';
import * as z from './_zod.ts';
import { sheetTextsSchema } from './sheet-schema.ts';

const appearance = mapping(
  {
    color: z.optional(line('amarillo pálido', 'Color')),
    odor: z.optional(line('cloro', 'Odor')),
    'physical-state': z.optional(line('líquido transparente', 'Physical state')),
  },
  'Appearance',
);

const copy = mapping(
  {
    tagline: z.optional(line('Quita la suciedad de la piedra', 'A line of the maker')),
    directions: z.optional(
      list(
        prose('Mojar la superficie.', 'A step of the directions'),
        '[Mojar la superficie., Enjuagar bien.]',
        'Directions for use, as many steps as `copy` has',
      ),
    ),
  },
  "The maker's own words for the label",
);

const translation = mapping(
  {
    use: z.optional(line('Limpiador para piedra y hormigón', 'Recommended use')),
    'advised-against': z.optional(
      list(
        line('No usar sobre aluminio', 'A use advised against'),
        '[No usar sobre aluminio]',
        'Uses advised against',
      ),
    ),
    appearance: z.optional(appearance),
    copy: z.optional(copy),
    sds: z.optional(sheetTextsSchema),
    ingredients: z.optional(
      z.record(
        z.string(),
        line('hidróxido de sodio', 'Name of a constituent, by its CAS number or its name', 200),
      ),
    ),
  },
  'Texts of the record in another language',
);

/** In which language the record is written, and its texts in another one. */
export const languageSchema = oneOf(
  languages,
  'Language in which the texts of the record are written; en where it is left out',
);
export const translationsSchema = mapping(
  Object.fromEntries(otherLanguages.map(language => [language, z.optional(translation)])) as Record<
    OtherLanguage,
    z.ZodMiniOptional<typeof translation>
  >,
  'Texts of the record in another language, for documents in it',
  `a group with ${otherLanguages.map(language => `\`${language}\``).join(', ')}`,
);

/** A translation of a text that the record does not have would be dropped: each is told at its place. */
export function wholeTranslations(
  { translations, ...own }: Partly,
  complain: (path: readonly (string | number)[], message: string, hint?: string) => void,
): void {
  for (const [language, said] of Object.entries(groupOf(translations)))
    walk(groupOf(said), own, [], ['translations', language]);

  function walk(said: Partly, of: Partly, path: readonly string[], at: readonly string[]): void {
    for (const [key, text] of Object.entries(said)) {
      // Constituents of raw materials have names too: another file.
      if (path.length === 0 && key === 'ingredients') continue;
      const named = [...path, key].join('.');
      const theirs = of[key];
      if (theirs === undefined)
        complain(
          [...at, key],
          `the record has no \`${named}\` of which this is the translation`,
          `give \`${named}\` in the record, or remove it here`,
        );
      else if (Array.isArray(text) && Array.isArray(theirs) && text.length > theirs.length)
        complain(
          [...at, key, theirs.length],
          `\`${named}\` has ${theirs.length} text${theirs.length === 1 ? '' : 's'} in the record, and here ${text.length}`,
          'give one for each, in the same order',
        );
      else walk(groupOf(text), groupOf(theirs), [...path, key], [...at, key]);
    }
  }
}

const groupOf = (value: unknown): Partly =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Partly) : {};

export type TranslationsInput = z.output<typeof translationsSchema>;
