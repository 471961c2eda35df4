import { hazardClasses } from './classes.ts';
import type { Hazard } from './hazard.ts';
import { listedClass } from './listed-class.ts';

type Category = Pick<Hazard, 'hazardClass' | 'category'>;

// 1A before 1B before 1 before 2; a class without a category after those with one.
const order = (category: string): string =>
  category === '' ? '~' : /^\d$/.test(category) ? `${category}~` : category;

/** By class and category the place among the categories of the class as listed, the most severe first. */
const places = new Map<string, ReadonlyMap<string, number>>();
for (const [at, { class: name, brackets, categories }] of hazardClasses.entries()) {
  const sorted = categories.map(({ category }) => order(category)).sort();
  // Classes that are listed together stand in the order of the Annexes: corrosion before irritation. Groups of gases
  // under pressure differ in how the gas is packed, not in severity.
  const placeOf = (category: string) =>
    at * 100 + (brackets === 'group' ? 0 : sorted.indexOf(order(category)));
  places.set(name, new Map(categories.map(({ category }) => [category, placeOf(category)])));
}

const placeOf = ({ hazardClass, category }: Category): number =>
  places.get(hazardClass)?.get(category) ?? Number.POSITIVE_INFINITY;

/**
 * Whether one category is more severe than another of the same class as listed: a corrosive than any irritant, 1A than
 * 1B, and 1B than 1, which does not say which.
 */
export const isWorse = (one: Category, other: Category): boolean => placeOf(one) < placeOf(other);

/** Whether one category says less than another of its class without being milder: 1 beside 1B. */
export const isLessSpecific = (one: Category, other: Category): boolean =>
  one.hazardClass === other.hazardClass &&
  /^\d$/.test(one.category) &&
  other.category.startsWith(one.category) &&
  one.category !== other.category;

/** Of the second list the hazards that the first lacks or has in a milder category. */
export function milderThan(own: readonly Hazard[], others: readonly Hazard[]): Hazard[] {
  return others.filter(theirs => {
    const same = own.filter(
      ours =>
        family(ours) === family(theirs) &&
        (ours.route === theirs.route || ours.route === null || theirs.route === null),
    );
    return !same.some(ours => !isWorse(theirs, ours));
  });
}

/** What two hazards share that differ in severity alone: class as listed, with the effect of STOT SE 3. */
export const family = ({ hazardClass, effect }: Hazard): string => listedClass(hazardClass) + (effect ?? '');
