import source from '../../../hazard-data/exposure/carcinogen-lists.source.json' with { type: 'json' };
import type { ItemBody } from './content.ts';
import type { SheetInput } from './input.ts';
import { lookUps } from './look-ups.ts';
import { secretsOf } from './secrets.ts';
import { maskedListings } from './withheld-look-ups.ts';

/** The lists with their editions, for the sheet's notes. */
export const listVersions = (): Readonly<Record<'ntp' | 'iarc' | 'osha', string>> => {
  const { ntp, iarc, osha } = source.lists;
  const named = ({ title, version }: { title: string; version: string }) => `${title} (${version})`;
  return { ntp: named(ntp), iarc: named(iarc), osha: named(osha) };
};

/** What is not sure of the lists themselves, for the reviewer alone. */
export const listDoubts = (): readonly { readonly list: string; readonly doubt: string }[] =>
  Object.values<{ title: string; doubt?: string }>(source.lists).flatMap(({ title, doubt }) =>
    doubt === undefined ? [] : [{ list: title, doubt }],
  );

/** Listings of every ingredient, named in section 3 or not (Table D.1, 11 (f)). */
export function carcinogens(input: SheetInput): ItemBody {
  const { constituents } = input.classification;
  const { carcinogens: words } = input.words.sheet;
  const secrets = secretsOf(input);
  const found = lookUps(input).carcinogens;
  const sought = constituents.flatMap((_, at) => {
    const lookUp = found[at];
    if (!lookUp) return [];
    const told = secrets.name(at);
    return [{ name: told, lookUp: secrets.identity.has(at) ? maskedListings(lookUp, told) : lookUp }];
  });
  const rows = sought.flatMap(({ name, lookUp }) => words.rows(name, lookUp));
  const { ntp, iarc, osha } = listVersions();
  return {
    text: rows.length > 0 ? [] : [words.none(sought.length)],
    table: rows.length > 0 ? { columns: words.columns, rows } : null,
    notes: [
      ...sought.flatMap(({ name, lookUp }) => words.setAside(name, lookUp)),
      words.editions([ntp, iarc, osha]),
    ],
    source: 'reference tables',
  };
}
