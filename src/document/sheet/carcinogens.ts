import source from '../../../hazard-data/exposure/carcinogen-lists.source.json' with { type: 'json' };
import type { CarcinogenListing } from '../../reference/exposure/open-exposure.ts';
import type { ItemBody } from './content.ts';
import type { SheetInput } from './input.ts';
import { fill, phrases } from './phrases.ts';

const words = phrases.toxicology;

/** The lists with their editions, for the sheet's notes. */
export const listVersions = (): Readonly<Record<'ntp' | 'iarc' | 'osha', string>> => {
  const { ntp, iarc, osha } = source.lists;
  const named = ({ title, version }: { title: string; version: string }) => `${title} (${version})`;
  return { ntp: named(ntp), iarc: named(iarc), osha: named(osha) };
};

/** Listing of every ingredient with a CAS number, named in section 3 or not (Table D.1, 11 (f)). */
export function carcinogens({ classification, exposure }: SheetInput): ItemBody {
  const known = classification.constituents.filter(({ water }) => !water);
  const rows = known.flatMap(({ name, cas }) =>
    (cas === null ? [] : exposure.carcinogens(cas)).map(listing => [
      sameName(name, listing.name) ? name : fill(words.listedAs, { name, listed: listing.name }),
      ...listed(listing),
    ]),
  );
  const without = known.filter(({ cas }) => cas === null).map(({ name }) => name);
  return {
    text: rows.length > 0 ? [] : [words.noneListed],
    table: rows.length > 0 ? { columns: words.listColumns, rows } : null,
    notes: [
      ...(without.length > 0 ? [fill(words.notLookedUp, { names: without.join(', ') })] : []),
      fill(words.listVersions, listVersions()),
    ],
    source: 'reference tables',
  };
}

const sameName = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

const listed = ({ ntp, iarc, osha }: CarcinogenListing): readonly string[] => [
  ntp ? words.ntp[ntp] : words.notListed,
  iarc ? fill(words.iarc, iarc) : words.notListed,
  osha ? fill(words.osha, { section: osha }) : words.notListed,
];
