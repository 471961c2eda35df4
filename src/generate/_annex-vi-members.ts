import { isCas } from '../notation/cas.ts';
import { type AnnexViRow, parts, type Unparsed } from './_annex-vi-row.ts';

/** One substance of an entry: a group entry numbers its members `[1]`, `[2]`. */
export interface Member {
  readonly cas: string | null;
  readonly ec: string | null;
  readonly name: string;
}

/** The members of an entry; one where it is no group. */
export function membersOf(row: AnnexViRow, unparsed: Unparsed[]): Member[] {
  const report = (column: string, text: string, message: string) =>
    unparsed.push({ index: row.index_no, column, text, message });
  const cas = numbered(row.cas_no);
  const ec = numbered(row.ec_no);
  if (!cas) report('cas_no', row.cas_no, 'not a list of numbered members');
  if (!ec) report('ec_no', row.ec_no, 'not a list of numbered members');
  if (!cas || !ec) return [];
  const names = memberNames(row.name, [...cas.keys()]);
  const members: Member[] = [];
  for (const [place, number] of cas) {
    if (number !== '-' && !isCas(number)) report('cas_no', number, 'no CAS number with a right check digit');
    members.push({ cas: known(number), ec: known(ec.get(place)), name: names.get(place) ?? row.name });
  }
  return members;
}

const known = (number: string | undefined): string | null => (number && number !== '-' ? number : null);

// `95-47-6 [1]; 106-42-3 [2]`, or one number alone, which gets the place 0.
function numbered(cell: string): Map<number, string> | null {
  const places = new Map<number, string>();
  for (const part of parts(cell, ';')) {
    const match = /^(\S+)(?: \[(\d+)\])?$/.exec(part);
    if (!match) return null;
    const place = Number(match[2] ?? 0);
    if (places.has(place)) return null;
    places.set(place, match[1]!);
  }
  return places;
}

// A name ends at its number: `boric acid [1] boric acid [2]`, not always in the order of the numbers. Where a number
// stands twice, as in the entries whose first name quotes another member, the last one ends it.
function memberNames(name: string, places: readonly number[]): Map<number, string> {
  if (places.length === 1 && places[0] === 0) return new Map([[0, name]]);
  const names = new Map<number, string>();
  let from = 0;
  for (const { place, end } of places
    .map(place => ({ place, end: name.lastIndexOf(`[${place}]`) }))
    .filter(({ end }) => end >= 0)
    .sort((a, b) => a.end - b.end)) {
    const own = name.slice(from, end).trim();
    names.set(place, own.replace(/;$/, '').replace(/^and /, ''));
    from = end + `[${place}]`.length;
  }
  return names;
}
