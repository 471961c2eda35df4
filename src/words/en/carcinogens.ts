import type { Warning } from '../../classify/facts/warning.ts';
import type { CarcinogenListing } from '../../reference/exposure/carcinogen-listings.ts';
import type { LookUp, SetAside } from '../../reference/lists/look-up.ts';
import type { Telling } from '../words.ts';
import { foundText } from './list-search.ts';

const NTP = {
  known: 'Known to be a human carcinogen',
  'reasonably anticipated': 'Reasonably anticipated to be a human carcinogen',
} as const;

const NOT_LISTED = 'Not listed';

const REASONS: Readonly<Record<SetAside<CarcinogenListing>['reason'], string>> = {
  'alcoholic-beverage': 'it is for drinks, not for a chemical product',
  'compounds-only': 'it is for compounds, not for the metal',
};

/** Words of the table of carcinogen listings in section 11. */
export const carcinogenWords = {
  columns: ['Ingredient', 'NTP', 'IARC', 'OSHA'],
  none: (count: number): string =>
    `No listing found by NTP, IARC (groups 1, 2A, 2B) or OSHA: ${count} ${
      count === 1 ? 'ingredient' : 'ingredients'
    } looked up by CAS number, by name and by group.`,
  editions: (lists: readonly string[]): string =>
    `Lists: ${lists.join('; ')}. Looked up by CAS number, by name and by group.`,
} as const;

const sameName = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

// Volume and section would tell an identity that is withheld: they are empty then.
const iarcText = ({ group, volume, year }: NonNullable<CarcinogenListing['iarc']>): string =>
  volume === '' ? `Group ${group}` : `Group ${group} (volume ${volume}; ${year})`;

/** The rows of an ingredient: how it is listed and by whom. */
export const listingRows = (name: string, { found }: LookUp<CarcinogenListing>): readonly string[][] =>
  found.map(each => {
    const { row } = each;
    const how = [sameName(name, row.name) ? '' : `listed as: ${row.name}`, foundText(each)].filter(Boolean);
    return [
      how.length > 0 ? `${name} (${how.join('; ')})` : name,
      row.ntp ? NTP[row.ntp] : NOT_LISTED,
      row.iarc ? iarcText(row.iarc) : NOT_LISTED,
      row.osha === null ? NOT_LISTED : row.osha === '' ? 'Regulated' : `Regulated: 29 CFR ${row.osha}`,
    ];
  });

/** Entries that a reader may expect and that do not concern the product. */
export const setAsideTexts = (name: string, { setAside }: LookUp<CarcinogenListing>): readonly string[] =>
  setAside.map(({ row, reason }) => `The entry "${row.name}" does not concern ${name}: ${REASONS[reason]}.`);

/** What the lists say of a constituent that its data do not classify as a carcinogen. */
export function carcinogenListed(
  { constituent, listings, added }: Extract<Warning, { id: 'carcinogen-listed' }>,
  tell: Telling,
): string {
  const texts = listings.map(each => {
    const { row } = each;
    const lists = [
      row.osha && `OSHA (29 CFR ${row.osha})`,
      row.ntp && `NTP (${row.ntp})`,
      row.iarc && `IARC (group ${row.iarc.group})`,
    ].filter(Boolean);
    const how = foundText(each);
    return `${lists.join(', ')} as ${row.name}${how ? ` (${how})` : ''}`;
  });
  const then =
    added === null
      ? 'decide whether it is classified'
      : `it counts as ${added}, because what OSHA regulates for cancer shall be classified; a source of your own may give another category`;
  return `${tell.names(constituent)} is not classified as a carcinogen in its data, and is listed by ${texts.join('; ')}: ${then}`;
}
