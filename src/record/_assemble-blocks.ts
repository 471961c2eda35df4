import { givenData } from './_lines.ts';
import { type Places, pathText } from './places.ts';
import type { SheetTexts } from './product-record.ts';
import type { ProductInput } from './product-schema.ts';
import type { ReactsInput } from './reacts-schema.ts';
import type { Reaction, Review, SheetIngredient, StatementSettings } from './record-blocks.ts';
import { type SheetKey, sheetKeys } from './sheet-keys.ts';
import type { SheetInput, SheetTextInput } from './sheet-schema.ts';
import type { StatementsInput } from './statements-schema.ts';
import type { Translation } from './translation.ts';
import type { TranslationsInput } from './translations-schema.ts';

/** The texts for the sheet, or for what was searched and not found by whom and where, by key. */
export function sheetOf(sheet: SheetInput | undefined, which: 'text' | 'searched'): SheetTexts {
  const flat: Partial<Record<SheetKey, string>> = {};
  if (!sheet) return flat;
  for (const key of sheetKeys) {
    const [group, member] = key.split('.') as [string, string | undefined];
    const found = sheet[group];
    const each =
      member === undefined || typeof found !== 'object' ? found : (found as Record<string, unknown>)[member];
    const text = each as SheetTextInput | undefined;
    if (typeof text === 'string' && which === 'text') flat[key] = text;
    if (typeof text === 'object' && which === 'searched') flat[key] = text.searched;
  }
  return flat;
}

/** The texts of the record in other languages, by language. */
export const translationsOf = (
  translations: TranslationsInput | undefined,
): Readonly<Record<string, Translation>> =>
  Object.fromEntries(
    Object.entries(translations ?? {}).flatMap(([language, said]) =>
      said
        ? [
            [
              language,
              {
                use: said.use ?? null,
                advisedAgainst: said['advised-against'] ?? [],
                appearance: {
                  color: said.appearance?.color ?? null,
                  odor: said.appearance?.odor ?? null,
                  physicalState: said.appearance?.['physical-state'] ?? null,
                },
                tagline: said.copy?.tagline ?? null,
                directions: said.copy?.directions ?? [],
                sheet: sheetOf(said.sds, 'text'),
                ingredients: said.ingredients ?? {},
              },
            ] as const,
          ]
        : [],
    ),
  );

export const sheetIngredientsOf = (
  sheet: SheetInput | undefined,
  places: Places,
): readonly SheetIngredient[] =>
  (sheet?.ingredients ?? []).map((each, index) => ({
    of: each.of,
    limits: (each.limits ?? []).map(({ list, value, date, union }) => ({
      list,
      value,
      date: date ?? null,
      union: union ?? false,
    })),
    ec: each.ec ?? null,
    registration: each.registration ?? null,
    pbt: each.pbt ?? null,
    endocrine: each.endocrine ?? null,
    candidateList: each['candidate-list'] ?? null,
    synonyms: each.synonyms ?? [],
    impurities: each.impurities ?? null,
    toxicity: each.toxicity ?? null,
    ecotoxicity: each.ecotoxicity ?? null,
    persistence: each.persistence ?? null,
    bioaccumulation: each.bioaccumulation ?? null,
    mobility: each.mobility ?? null,
    source: each.source ?? null,
    list: each.list ?? false,
    at: places.at(['sds', 'ingredients', index]),
  }));

export function statementsOf(input: StatementsInput | undefined, places: Places): StatementSettings | null {
  if (!input) return null;
  const { words, conditions, choose, keep, omit, add } = input;
  const signal = input['consumer-signal'];
  return {
    words: words ?? {},
    conditions: {
      volatile: conditions?.volatile ?? null,
      inhalable: conditions?.inhalable ?? null,
      sprayed: conditions?.sprayed ?? null,
      specificTreatment: conditions?.['specific-treatment'] ?? null,
      compatibilityGroupS: conditions?.['compatibility-group-S'] ?? null,
    },
    choose: choose ?? {},
    keep: keep ?? [],
    omit: (omit ?? []).map((each, index) => ({ ...each, at: places.at(['statements', 'omit', index]) })),
    add: add ?? [],
    consumerSignal: signal ? { ...signal, at: places.at(['statements', 'consumer-signal']) } : null,
  };
}

export const reactionsOf = (input: ReactsInput | undefined, places: Places): readonly Reaction[] =>
  (input ?? []).map(({ consumes, forms, source }, index) => ({
    consumes: consumes.map(({ of, moles, 'molar-mass': mass }) => ({
      of,
      moles,
      molarMass: mass.base,
    })),
    forms: forms.map(each => ({
      name: each.name,
      cas: each.cas ?? null,
      moles: each.moles,
      molarMass: each['molar-mass'].base,
      given: givenData(each as Parameters<typeof givenData>[0]),
    })),
    source: source ?? null,
    at: places.at(['reacts', index]),
    path: pathText(['reacts', index]),
  }));

export const reviewsOf = (input: ProductInput['review']): readonly Review[] =>
  (input ?? []).map(({ by, qualification, date, of, fingerprint, note }) => ({
    by,
    qualification: qualification ?? null,
    date,
    of,
    fingerprint,
    note: note ?? null,
  }));
