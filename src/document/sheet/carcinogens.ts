import source from '../../../hazard-data/exposure/carcinogen-lists.source.json' with { type: 'json' };
import { carcinogenWords, listingRows, setAsideTexts } from '../../words/en/carcinogens.ts';
import type { ItemBody } from './content.ts';
import type { SheetInput } from './input.ts';

/** The lists with their editions, for the sheet's notes. */
export const listVersions = (): Readonly<Record<'ntp' | 'iarc' | 'osha', string>> => {
  const { ntp, iarc, osha } = source.lists;
  const named = ({ title, version }: { title: string; version: string }) => `${title} (${version})`;
  return { ntp: named(ntp), iarc: named(iarc), osha: named(osha) };
};

/** Listings of every ingredient, named in section 3 or not (Table D.1, 11 (f)). */
export function carcinogens({ record, classification, exposure }: SheetInput): ItemBody {
  const { form } = record;
  const sought = classification.constituents
    .filter(({ water }) => !water)
    .map(({ name, cas }) => ({ name, lookUp: exposure.carcinogens({ name, cas, form }) }));
  const rows = sought.flatMap(({ name, lookUp }) => listingRows(name, lookUp));
  const { ntp, iarc, osha } = listVersions();
  return {
    text: rows.length > 0 ? [] : [carcinogenWords.none(sought.length)],
    table: rows.length > 0 ? { columns: carcinogenWords.columns, rows } : null,
    notes: [
      ...sought.flatMap(({ name, lookUp }) => setAsideTexts(name, lookUp)),
      carcinogenWords.editions([ntp, iarc, osha]),
    ],
    source: 'reference tables',
  };
}
