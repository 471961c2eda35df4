import groupFile from '../../hazard-data/reactivity/groups.json' with { type: 'json' };
import pairFile from '../../hazard-data/reactivity/pairs.json' with { type: 'json' };
import type { PhysicalForm } from '../record/product-record.ts';
import type { Ingredient } from './ingredient.ts';

/** A group of constituents that react alike: by CAS number, by hazard class, or water. */
export interface ReactiveGroup {
  readonly id: string;
  readonly name: string;
  readonly note?: string;
  readonly members: readonly { readonly cas: string; readonly name: string }[];
  readonly hazardClasses?: readonly string[];
  readonly water?: boolean;
  /** Parts of names, of constituents without a CAS number. */
  readonly words?: readonly string[];
  /** What a product with a constituent of the group must not be mixed with, from a percent. */
  readonly alone?: {
    readonly with: string;
    readonly gives: string;
    readonly from: number;
    readonly source: string;
  };
}

/** Groups that react with each other, and what they give. */
export interface ReactivePair {
  readonly id: string;
  readonly a: readonly string[];
  readonly b: readonly string[];
  /** `toxic gas`, `fire or explosion`, `pressure`, `heat`, `new substance`. */
  readonly danger: string;
  readonly gives: string;
  readonly text: string;
  /** Physical forms in which the pair reacts in the pack; every form where absent. */
  readonly forms?: readonly PhysicalForm[];
  /** Percent from which a side counts, where not that of the file. */
  readonly fromA?: number;
  readonly fromB?: number;
  /** From this measured pH the acid is present as its salt. */
  readonly quietFromPh?: number;
  /** What is left is no longer the two ingredients that a sum counts. */
  readonly neutralizes?: boolean;
  /** Milder where side a is below a percent. */
  readonly below?: {
    readonly a: number;
    /** Where water thins it; a dry mixture is never dilute. */
    readonly forms: readonly PhysicalForm[];
    readonly danger: string;
    readonly gives: string;
    readonly text: string;
  };
  readonly excludeCas?: readonly string[];
  readonly source: readonly string[];
}

export const reactiveGroups = groupFile.groups as readonly ReactiveGroup[];
/** Percent from which a constituent counts. */
export const reactiveFrom: number = pairFile.from.percent;
/** Where the law says that the substances of a mixture do not react. */
export const mixtureCite: string = pairFile.mixture;
/** Where the law says that use which can be foreseen counts. */
export const useCite: string = pairFile.use;
/** Where the laws say that summing may not hold for acids and bases. */
export const additivityCite: string = pairFile.additivity;

const severity = new Map(pairFile.order.map((danger, rank) => [danger, rank]));
/** Pairs, the worst danger first. */
export const reactivePairs: readonly ReactivePair[] = (pairFile.pairs as readonly ReactivePair[]).toSorted(
  (one, other) => severity.get(one.danger)! - severity.get(other.danger)!,
);

const pairsByGroup = new Map<string, ReactivePair[]>();
for (const pair of reactivePairs)
  for (const group of pair.a) {
    const pairs = pairsByGroup.get(group);
    if (pairs) pairs.push(pair);
    else pairsByGroup.set(group, [pair]);
  }

/** Pairs of which one of the groups is side a, the worst danger first. */
export function pairsWith(groups: ReadonlySet<string>): readonly ReactivePair[] {
  const found = new Set<ReactivePair>();
  for (const group of groups) for (const pair of pairsByGroup.get(group) ?? []) found.add(pair);
  return found.size < 2 ? [...found] : reactivePairs.filter(pair => found.has(pair));
}

const classGroups = reactiveGroups.filter(({ hazardClasses }) => hazardClasses);
const waterGroups = reactiveGroups.filter(group => group.water);
const byCas = new Map<string, Set<string>>();
for (const { id, members } of reactiveGroups)
  for (const { cas } of members) byCas.set(cas, (byCas.get(cas) ?? new Set()).add(id));

const byClass = new Map<string, string[]>();
for (const { id, hazardClasses } of classGroups)
  for (const hazardClass of hazardClasses!)
    byClass.set(hazardClass, [...(byClass.get(hazardClass) ?? []), id]);

const byName = new Map<string, string[]>();
for (const { id, members } of reactiveGroups)
  for (const { name } of members) byName.set(name, [...(byName.get(name) ?? []), id]);
const wordGroups = reactiveGroups.filter(({ words }) => words);

const named = new Map<string, ReadonlySet<string>>();
const noGroups: ReadonlySet<string> = new Set();
// Asked for each product again: names repeat.
function groupsByName(written: string): ReadonlySet<string> {
  const known = named.get(written);
  if (known) return known;
  const name = written.toLowerCase();
  const found = new Set([
    ...(byName.get(name) ?? []),
    ...wordGroups.filter(({ words }) => words!.some(word => name.includes(word))).map(({ id }) => id),
  ]);
  if (named.size < 10_000) named.set(written, found);
  return found;
}

/** An ingredient with the groups that it belongs to. */
export interface Grouped {
  readonly ingredient: Ingredient;
  readonly groups: ReadonlySet<string>;
}

/** The ingredients that belong to any group. */
export function groupedIn(ingredients: readonly Ingredient[]): readonly Grouped[] {
  const grouped: Grouped[] = [];
  for (const ingredient of ingredients) {
    const groups = groupsOf(ingredient);
    if (groups.size > 0) grouped.push({ ingredient, groups });
  }
  return grouped;
}

/** Groups of a constituent: by CAS number, by name where it has none, by hazard class. */
export function groupsOf({
  cas,
  name,
  water,
  data,
}: Pick<Ingredient, 'cas' | 'name' | 'water' | 'data'>): ReadonlySet<string> {
  const listed = cas ? byCas.get(cas) : groupsByName(name);
  if (!water && !data.hazards.some(({ hazardClass }) => byClass.has(hazardClass))) return listed ?? noGroups;
  const found = new Set(listed);
  if (water) for (const { id } of waterGroups) found.add(id);
  for (const { hazardClass } of data.hazards) for (const id of byClass.get(hazardClass) ?? []) found.add(id);
  return found;
}
