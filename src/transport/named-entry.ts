import { Exact } from '../quantity/exact.ts';
import { compare, compareSum, compareValues } from '../quantity/sum.ts';
import type { PercentRange } from '../reference/transport/percent-range.ts';
import type { TableEntry } from '../reference/transport/table-entry.ts';
import type { NamedSubstance, TransportData } from '../reference/transport/transport-data.ts';
import { anyClass, contributes } from './contributors.ts';
import type { TransportConstituent, TransportInput } from './input.ts';

/** The substance whose name a mixture bears, with the rows of the table for its concentration. */
export interface NamedMaterial {
  readonly constituent: TransportConstituent;
  readonly substance: NamedSubstance;
  readonly entries: readonly TableEntry[];
  /** Whether it is the substance alone, or of a concentration that the entry names: the table says what it is. */
  readonly listed: boolean;
  /** Whether the material is the substance with water and nothing else hazardous, or not known. */
  readonly solution: boolean;
}

const within = (percent: Exact, { from, to }: PercentRange): boolean =>
  (from === null ||
    (from.included ? compare(percent, from.percent) >= 0 : compare(percent, from.percent) > 0)) &&
  (to === null || (to.included ? compare(percent, to.percent) <= 0 : compare(percent, to.percent) < 0));

/**
 * The single predominant hazardous material of a mixture, where the table names it (49 CFR 172.101(c)(10)(i)): the
 * constituent with an entry of its own that is more than all other hazardous constituents together. Null where none
 * is.
 */
export function namedMaterial(input: TransportInput, data: TransportData): NamedMaterial | null {
  const hazardous = input.constituents.filter(
    constituent => contributes(constituent, ...anyClass) || hasEntries(constituent, data),
  );
  for (const constituent of hazardous) {
    const substance = substanceOf(constituent, data);
    if (!substance || substance.entries.length === 0) continue;
    const others = hazardous.filter(
      other => other !== constituent && contributes(other, ...anyClass) && !sameSubstance(other, substance),
    );
    const excess = compareSum(
      [{ amount: constituent.low, weight: 1 }, ...others.map(({ high }) => ({ amount: high, weight: -1 }))],
      0,
    );
    if (excess <= 0) continue;
    const entries = entriesFor(input, constituent, substance, data);
    if (entries.length === 0) continue;
    return {
      constituent,
      substance,
      entries,
      listed: compare(constituent.low, 100) >= 0 || entries.every(({ range }) => range?.from),
      solution: others.length === 0,
    };
  }
  return null;
}

/**
 * A constituent whose range of percent lies partly in the range of an entry and partly outside; null where none
 * does.
 */
export function straddling(input: TransportInput, data: TransportData): TransportConstituent | null {
  const fits = (constituent: TransportConstituent, percent: Exact): string => {
    const substance = substanceOf(constituent, data);
    const fixed = { ...constituent, low: percent, high: percent };
    return substance
      ? entriesFor(input, fixed, substance, data)
          .map(({ description }) => description)
          .join()
      : '';
  };
  return (
    input.constituents.find(
      constituent =>
        compareValues(constituent.low, constituent.high) !== 0 &&
        fits(constituent, constituent.low) !== fits(constituent, constituent.high),
    ) ?? null
  );
}

const sameSubstance = (
  { cas }: TransportConstituent,
  { cas: numbers }: Pick<NamedSubstance, 'cas'>,
): boolean => cas !== null && numbers.includes(cas);

/** An entry with a lowest concentration makes a constituent hazardous whatever its classification says. */
function hasEntries(constituent: TransportConstituent, data: TransportData): boolean {
  if (constituent.water || compare(constituent.high, 0) <= 0) return false;
  return (substanceOf(constituent, data)?.entries.length ?? 0) > 0;
}

/** Found by CAS number, else by a proper shipping name of the table that is no generic one. */
function substanceOf({ cas, name }: TransportConstituent, data: TransportData): NamedSubstance | null {
  const byCas = cas === null ? null : data.substance(cas);
  if (byCas) return byCas;
  const rows = data.table
    .byName(name)
    .filter(({ hazardClass, symbols }) => hazardClass !== 'Forbidden' && !symbols.includes('G'));
  const ids = [...new Set(rows.map(({ id }) => id))];
  if (ids.length === 0) return null;
  const entries = ids.map(un => ({ un, name: rows.find(({ id }) => id === un)!.description }));
  return { name, cas: [], entries, organic: false };
}

function entriesFor(
  { form }: TransportInput,
  { low, high }: TransportConstituent,
  substance: NamedSubstance,
  data: TransportData,
): readonly TableEntry[] {
  const least = substance.atLeastFactor
    ? Exact.fraction(low.exact.mul(Exact.decimal(substance.atLeastFactor).exact))
    : low;
  const rows = substance.entries
    .filter(entry => (entry.form === undefined || entry.form === form) && entry.counts === undefined)
    .flatMap(({ un, name }) =>
      data.table.byId(un).filter(({ description }) => !name || description.startsWith(name)),
    );
  const fitting = rows.filter(({ range }) => range === null || (within(least, range) && within(high, range)));
  // Of two rows for one material the domestic one is for highway and rail (172.101(b)(3)).
  const domestic = fitting.filter(({ symbols }) => symbols.includes('D'));
  return domestic.length > 0 ? domestic : fitting;
}

/** The name of an entry for a material: `Isopropanol solution`, `Hypochlorite solutions` (172.101(c)(10)(i)). */
export function shippingName(
  { names }: TableEntry,
  { constituent, solution }: Pick<NamedMaterial, 'constituent' | 'solution'>,
  form: string,
): string {
  const plain = (name: string) => name.replace(/,$/, '');
  const pure = compare(constituent.low, 100) >= 0;
  const asSolution =
    names.find(name => /\b(solutions?|mixtures?)\b/i.test(name)) ??
    names.find(name => /\bacids?\b/i.test(name));
  if (pure) return plain(names[0]!);
  if (asSolution) return plain(asSolution);
  return `${plain(names[0]!)} ${solution && form === 'liquid' ? 'solution' : 'mixture'}`;
}
