import { type ReactivePair, reactiveFrom, reactiveGroups, reactivePairs } from '../classify/reactivity.ts';
import { type BatchMaterial, type GroupedIngredients, grouped, namesIn } from './material.ts';
import data from './order.json' with { type: 'json' };

/** A caution by the hazards of a material. */
export type HazardCaution = Exclude<keyof typeof data.hazards, 'about'>;

/** Two sides that react when they meet. */
export interface Meeting {
  readonly pair: string;
  /** `toxic gas`, `fire or explosion`, `pressure`, `heat`, `new substance`. */
  readonly danger: string;
  /** What comes of it, as the table of pairs words it. */
  readonly gives: string;
  readonly here: readonly string[];
  readonly there: readonly string[];
}

/** What a step asks to mind. */
export type Caution =
  | { readonly id: 'acid-into-water' | 'base-into-water'; readonly names: readonly string[] }
  /** Water is added onto acid or base that stands in the tank: the wrong way round. */
  | { readonly id: 'water-onto-acid' | 'water-onto-base'; readonly names: readonly string[] }
  /** What must not come near the material, whether the formula holds it or not. */
  | {
      readonly id: 'keep-from';
      readonly names: readonly string[];
      readonly from: string;
      readonly gives: string;
    }
  /** `step` is that of the other side. */
  | ({ readonly id: 'meets'; readonly step: number } & Meeting)
  | { readonly id: HazardCaution; readonly statements: readonly string[] }
  | { readonly id: 'untested'; readonly hazards: readonly string[] }
  /** The formula leaves a range: the amount is to be set. */
  | { readonly id: 'range' }
  | { readonly id: 'no-data'; readonly names: readonly string[] };

/** Materials that must not meet as they are delivered, by their numbers from 1. */
export interface KeepApart extends Meeting {
  readonly first: number;
  readonly second: number;
}

/** Meetings of ingredients that reach their percent. @param share of a material in what is looked at, 0 to 1. */
function meetings(
  one: GroupedIngredients,
  other: GroupedIngredients,
  shares: readonly [number, number],
): Meeting[] {
  const side = (all: GroupedIngredients, { a, b, excludeCas }: ReactivePair, ids: 'a' | 'b', from: number) =>
    namesIn(
      all.filter(({ ingredient: { cas } }) => !(cas && excludeCas?.includes(cas))),
      ids === 'a' ? a : b,
      from,
    );
  return reactivePairs.flatMap(pair => {
    const { fromA = reactiveFrom, fromB = reactiveFrom, id, danger, gives } = pair;
    const tries = [
      [side(one, pair, 'a', fromA / shares[0]), side(other, pair, 'b', fromB / shares[1])],
      [side(one, pair, 'b', fromB / shares[0]), side(other, pair, 'a', fromA / shares[1])],
    ] as const;
    const found = tries.find(([here, there]) => here.length > 0 && there.length > 0);
    return found ? [{ pair: id, danger, gives, here: found[0], there: found[1] }] : [];
  });
}

const shareOf = ({ high }: BatchMaterial): number => high.value / 100;

/** What each step asks to mind: what meets in the tank, which way round, and the hazards of the material. */
export function stepCautions(ordered: readonly BatchMaterial[]): readonly (readonly Caution[])[] {
  const groups = ordered.map(grouped);
  const { percent } = data.from;
  const isWater = ordered.map(({ ingredients }) => ingredients.every(({ water }) => water));
  return ordered.map((material, at) => {
    const before = ordered.slice(0, at).map((_, i) => i);
    const all = groups[at]!;
    const found: Caution[] = material.low.value === material.high.value ? [] : [{ id: 'range' }];
    const heat = (id: 'acid' | 'base', ids: readonly string[]) => {
      const names = namesIn(all, ids, percent);
      if (names.length > 0) found.push({ id: `${id}-into-water`, names });
      const inTank = isWater[at] ? before.flatMap(i => namesIn(groups[i]!, ids, percent)) : [];
      if (inTank.length > 0) found.push({ id: `water-onto-${id}`, names: [...new Set(inTank)] });
    };
    heat('acid', data.acids);
    heat('base', data.bases);
    for (const i of before)
      for (const meeting of meetings(all, groups[i]!, [shareOf(material), shareOf(ordered[i]!)]))
        found.push({ id: 'meets', step: i + 1, ...meeting });
    for (const { id, alone } of reactiveGroups) {
      const names = alone ? namesIn(all, [id], alone.from) : [];
      if (alone && names.length > 0)
        found.push({ id: 'keep-from', names, from: alone.with, gives: alone.gives });
    }
    for (const id of Object.keys(data.hazards) as (HazardCaution | 'about')[]) {
      if (id === 'about') continue;
      const statements = material.statements.filter(code =>
        data.hazards[id].some(start => code.startsWith(start)),
      );
      if (statements.length > 0) found.push({ id, statements });
    }
    if (material.untested.length > 0) found.push({ id: 'untested', hazards: material.untested });
    const unknown = material.ingredients.filter(({ data: { noData } }) => noData).map(({ name }) => name);
    if (unknown.length > 0) found.push({ id: 'no-data', names: unknown });
    return found;
  });
}

/** Materials that must not meet undiluted: at the bench, in a pail, in a spill. Heat and worse. */
export function keepApart(ordered: readonly BatchMaterial[]): readonly KeepApart[] {
  const groups = ordered.map(grouped);
  return ordered.flatMap((_, second) =>
    ordered.slice(0, second).flatMap((_, first) => {
      const worst = meetings(groups[second]!, groups[first]!, [1, 1]).find(
        ({ danger, pair }) => danger !== 'new substance' && !pair.endsWith('-water'),
      );
      return worst ? [{ first: first + 1, second: second + 1, ...worst }] : [];
    }),
  );
}
