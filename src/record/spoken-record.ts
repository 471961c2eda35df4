import type { ProductRecord } from './product-record.ts';
import type { SheetKey } from './sheet-keys.ts';
import type { Translation } from './translation.ts';

/** A record as a document in another language says it, and what it has to leave as it is written. */
export interface SpokenRecord<R extends ProductRecord> {
  readonly record: R;
  /** Texts that stay in the language of the record, by their key there. */
  readonly untranslated: readonly { readonly key: string; readonly text: string }[];
}

const NOTHING: Translation = {
  use: null,
  advisedAgainst: [],
  appearance: { color: null, odor: null, physicalState: null },
  tagline: null,
  directions: [],
  sheet: {},
  ingredients: {},
};

/**
 * The record with its texts in a language, as far as it gives them; those of a list only where all of them are given,
 * so that none is dropped. A trade name is the same in every language.
 */
export function spokenRecord<R extends ProductRecord>(record: R, language: string): SpokenRecord<R> {
  if ((record.language ?? 'en') === language) return { record, untranslated: [] };
  const said = record.translations?.[language] ?? NOTHING;
  const untranslated: { key: string; text: string }[] = [];
  const stays = (key: string, ...texts: readonly (string | null | undefined)[]): void => {
    for (const text of texts) if (text) untranslated.push({ key, text });
  };
  const one = (key: string, own: string | null, other: string | null): string | null => {
    if (own !== null && other === null) stays(key, own);
    return own === null ? null : (other ?? own);
  };
  const all = (key: string, own: readonly string[], other: readonly string[]): readonly string[] => {
    if (own.length === other.length) return other;
    stays(key, ...own);
    return own;
  };
  const { appearance, copy } = record;
  const sheet = Object.fromEntries(
    Object.entries(record.sheet).map(([key, own]) => [
      key,
      one(`sds.${key}`, own ?? null, said.sheet[key as SheetKey] ?? null) ?? '',
    ]),
  );
  const spoken: R = {
    ...record,
    use: one('use', record.use, said.use),
    advisedAgainst: all('advised-against', record.advisedAgainst, said.advisedAgainst),
    appearance: {
      color: one('appearance.color', appearance.color, said.appearance.color),
      odor: one('appearance.odor', appearance.odor, said.appearance.odor),
      physicalState: one(
        'appearance.physical-state',
        appearance.physicalState,
        said.appearance.physicalState,
      ),
    },
    copy: {
      ...copy,
      tagline: one('copy.tagline', copy.tagline, said.tagline),
      directions: all('copy.directions', copy.directions, said.directions),
    },
    sheet,
    spokenNames: said.ingredients,
  };
  stays('sds', ...Object.values(record.sheetSearched));
  const { other, pH, density, flashPoint, initialBoilingPoint, kinematicViscosity40C } = record.properties;
  for (const measured of [pH, density, flashPoint, initialBoilingPoint, kinematicViscosity40C])
    stays('properties', measured?.method, measured?.source);
  for (const [key, { written, method, source }] of Object.entries(other))
    stays(`properties.${key}`, /\p{L}{4}/u.test(written) ? written : null, method, source);
  for (const { method, source, reason } of record.evidence) stays('evidence', method, source, reason);
  for (const each of record.sheetIngredients)
    stays(
      'sds.ingredients',
      each.impurities,
      each.toxicity,
      each.ecotoxicity,
      each.persistence,
      each.bioaccumulation,
      each.mobility,
      each.pbt,
      each.endocrine,
      each.candidateList,
    );
  const { maker } = record;
  stays(
    'maker.emergency.hours',
    maker && /\p{L}{3}/u.test(maker.emergency.hours) ? maker.emergency.hours : null,
  );
  for (const pack of record.packs)
    for (const { use, with: diluent } of pack.dilutions ?? [])
      stays(`packs.${pack.id}.dilution`, use, diluent);
  return { record: spoken, untranslated };
}
