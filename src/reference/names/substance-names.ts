import data from '../../../hazard-data/substances/common-names.json' with { type: 'json' };
import type { HarmonisedTable } from '../harmonised/open-harmonised.ts';
import { synonyms } from '../harmonised/synonyms.ts';
import { nameKey, soughtKeys, spelled } from '../lists/names.ts';

/** A substance as a table calls it. */
export interface NamedSubstance {
  readonly cas: string;
  readonly name: string;
}

/** Names of substances in CLP Annex VI Table 3 and in the trade, both ways. */
export interface SubstanceNames {
  /** Names of a CAS number, that of Table 3 first; empty where none is known. */
  namesOf(cas: string): readonly string[];
  /** Substances that are called so, whatever the spelling and the strength that is added to the name. */
  called(name: string): readonly NamedSubstance[];
  /** All names, by key. */
  readonly keys: ReadonlyMap<string, readonly NamedSubstance[]>;
}

/** Gathers the names; rows of every date count, because a name does not change with the date. */
export function gatherNames(table: HarmonisedTable): SubstanceNames {
  const byCas = new Map<string, Set<string>>();
  const keys = new Map<string, NamedSubstance[]>();
  const add = (cas: string, name: string) => {
    byCas.set(cas, (byCas.get(cas) ?? new Set()).add(name));
    const key = nameKey(name);
    if (key.length < 2) return;
    const known = keys.get(key) ?? [];
    if (!known.some(each => each.cas === cas)) keys.set(key, [...known, { cas, name }]);
  };
  for (const { cas, name } of table.names()) {
    const names = synonyms(name);
    for (const each of names.length > 1 ? names.slice(1) : names) add(cas, each);
  }
  for (const { cas, names } of data.substances) for (const name of names) add(cas, name);
  return {
    namesOf: cas => [...(byCas.get(cas) ?? [])],
    called: name =>
      [...soughtKeys(name), nameKey(bare(name))]
        .map(key => keys.get(key) ?? [])
        .find(found => found.length > 0) ?? [],
    keys,
  };
}

/** A name without its grade, its form and which mirror image it is. */
const bare = (name: string): string =>
  spelled(name)
    .replace(/\([^)]*\)/gu, ' ')
    .replace(/\b(?:technical|tech|food|usp|reagent|industrial|pure)(?: grade)?\b/gu, ' ')
    .replace(/\b(?:anhydrous|flakes?|pellets?|beads?|prills?|powder|granular|liquid|crystals?)\b/gu, ' ')
    .replace(/^\s*(?:d|l|dl|r|s)-/u, '')
    .trim();

/** What stands before the name of a substance and says which isomer it is. */
const ISOMER = /^(?:(?:\d[\d,']*|[a-z]{1,2}|cis|trans|tert|sec|alpha|beta|mixed)[-\s])+$/u;

/** What stands behind it and says how it is sold. */
const SOLD = /^[\s,;(]+(?:\[|\(|solution|…|\.)/u;

const ends = (long: string, short: string): boolean =>
  long.endsWith(short) && ISOMER.test(long.slice(0, -short.length));
const begins = (long: string, short: string): boolean =>
  long.startsWith(short) && SOLD.test(long.slice(short.length));

/** Whether two names are of one substance or of a form of it: an isomer, a solution. */
export function alike(one: string, other: string): boolean {
  const [a, b] = [bare(one), bare(other)];
  if (nameKey(a) === nameKey(b)) return true;
  const [short, long] = a.length < b.length ? [a, b] : [b, a];
  return short.length > 3 && (ends(long, short) || begins(long, short));
}
