import table from '../../hazard-data/hazard-classes.json' with { type: 'json' };
import type { Route, TransientEffect } from './hazard.ts';

export type HazardKind = 'physical' | 'health' | 'environmental';

/** What may follow a class in brackets. */
export type BracketUse = 'acute-route' | 'route' | 'organs' | 'group';

/** A category of a hazard class with the H-codes that follow from it. */
export interface HazardCategory {
  /** `1B`, `Comp.`; empty where the class has none. */
  readonly category: string;
  /** H-codes of the category, the one that names it first; empty where none or where it depends on the route or effect. */
  readonly statements: readonly string[];
  readonly byRoute?: Readonly<Record<Route, string>>;
  readonly byEffect?: Readonly<Record<TransientEffect, string>>;
  /** H-codes that say more than the category and count only where written: `H360FD`, `H350i`. */
  readonly lettered?: readonly string[];
  /** H-codes that a row of Annex VI Table 3 prints although the category has another one. */
  readonly printed?: readonly string[];
  readonly note?: string;
}

/** A hazard class in the abbreviation of CLP Annex VI Table 1.1. */
export interface HazardClass {
  readonly class: string;
  /** The class under which it is judged and listed, where that is not its own. */
  readonly listed?: string;
  readonly title: string;
  readonly kind: HazardKind;
  /** Chapter of UN GHS, section of CLP Annex I, section of 29 CFR 1910.1200; null where the class is not there. */
  readonly ghs: string | null;
  readonly clp: string | null;
  readonly us: string | null;
  readonly brackets?: BracketUse;
  readonly note?: string;
  readonly categories: readonly HazardCategory[];
}

/** Class and category as one: `Skin Corr. 1B`, `Lact.`. */
export const hazardCode = (hazardClass: string, category: string): string =>
  category === '' ? hazardClass : `${hazardClass} ${category}`;

/** All classes of CLP, UN GHS and 29 CFR 1910.1200, in the order of the Annexes. */
export const hazardClasses: readonly HazardClass[] = table.classes as readonly HazardClass[];

const byClass = new Map(hazardClasses.map(entry => [entry.class, entry]));

/** A class with one of its categories. */
export interface ClassAndCategory {
  readonly hazardClass: HazardClass;
  readonly category: HazardCategory;
}

const byCode = new Map<string, ClassAndCategory>(
  hazardClasses.flatMap(hazardClass =>
    hazardClass.categories.map(
      category =>
        [hazardCode(hazardClass.class, category.category), { hazardClass, category }] satisfies [
          string,
          unknown,
        ],
    ),
  ),
);

const byCategory = new Map(
  hazardClasses.map(({ class: name, categories }) => [
    name,
    new Map(
      categories.map(category => [
        category.category,
        { code: hazardCode(name, category.category), category },
      ]),
    ),
  ]),
);

/** The code of a class and category, with what follows from it; undefined where there is none. */
export const findCategory = (
  hazardClass: string,
  category: string,
): { readonly code: string; readonly category: HazardCategory } | undefined =>
  byCategory.get(hazardClass)?.get(category);

/** The class of an abbreviation, as `STOT SE`; undefined where there is none. */
export const findClass = (abbreviation: string): HazardClass | undefined => byClass.get(abbreviation);

/** The class and category of a code without brackets, as `Skin Corr. 1B`; undefined where there is none. */
export const findCode = (code: string): ClassAndCategory | undefined => byCode.get(code);

/** Every class and category as a code without brackets. */
export const hazardCodes: readonly string[] = [...byCode.keys()];

/** The H-code that follows from a category with its route or effect; null where none does. */
export function followingStatement(
  category: HazardCategory,
  route: Route | null,
  effect: TransientEffect | null,
): string | null {
  if (category.byRoute) return route ? category.byRoute[route] : null;
  if (category.byEffect) return effect ? category.byEffect[effect] : null;
  return category.statements[0] ?? null;
}

/** Every H-code that may be written behind a category. */
export const permittedStatements = (category: HazardCategory): readonly string[] => [
  ...category.statements,
  ...Object.values(category.byRoute ?? {}),
  ...Object.values(category.byEffect ?? {}),
  ...(category.lettered ?? []),
  ...(category.printed ?? []),
];
