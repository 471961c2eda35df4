import type { Scale } from '../../quantity/scale.ts';
import { bySource } from '../facts/provision.ts';
import type { ReactiveAdvice, Warning } from '../facts/warning.ts';
import type { Ingredient, Mixture } from '../ingredient.ts';
import {
  additivityCite,
  groupsOf,
  mixtureCite,
  type ReactivePair,
  reactiveFrom,
  reactivePairs,
} from '../reactivity.ts';

type Grouped = readonly { readonly ingredient: Ingredient; readonly groups: ReadonlySet<string> }[];

/**
 * Constituents that react with each other when mixed: toxic gas, fire, pressure or heat may come of it, and a
 * calculation from the ingredients does not hold for what forms, since the substances of a mixture do not react (29 CFR
 * 1910.1200(c), definition of mixture). The worst danger first, one warning for each pair of groups. Groups and pairs
 * after EPA-600/2-80-076, 40 CFR 264 App. V and agency notes, each pair with its source.
 * @param mixture at the concentrations to judge; the upper ends where ranges are given.
 */
export function reactiveConstituents(mixture: Mixture, scale: Scale): Warning[] {
  const grouped: { ingredient: Ingredient; groups: ReadonlySet<string> }[] = [];
  const present = new Set<string>();
  for (const ingredient of mixture.ingredients) {
    if (!scale.reaches(ingredient.percent, reactiveFrom)) continue;
    const groups = groupsOf(ingredient);
    if (groups.size > 0) grouped.push({ ingredient, groups });
    for (const group of groups) present.add(group);
  }
  if (grouped.length < 2) return [];
  const warnings: Warning[] = [];
  for (const pair of reactivePairs) {
    if (!holdsAny(present, pair.a) || !holdsAny(present, pair.b)) continue;
    if (!pair.forms || pair.forms.includes(mixture.form))
      warnings.push(...warningOf(pair, grouped, mixture, scale));
  }
  return warnings;
}

const isDilute = (
  { below }: ReactivePair,
  left: readonly Ingredient[],
  { form }: Mixture,
  scale: Scale,
): boolean =>
  below?.forms.includes(form) === true &&
  !scale.meets(
    left.map(({ percent }) => ({ amount: percent, weight: 1 })),
    below.a,
  );

// Asked for every pair of every product.
function holdsAny(present: ReadonlySet<string>, ids: readonly string[]): boolean {
  for (const id of ids) if (present.has(id)) return true;
  return false;
}

function warningOf(pair: ReactivePair, grouped: Grouped, mixture: Mixture, scale: Scale): Warning[] {
  const one = sideOf(scale, pair, grouped, pair.a, pair.fromA);
  const other = sideOf(scale, pair, grouped, pair.b, pair.fromB);
  const reacts = (x: Ingredient, y: Ingredient): boolean =>
    x !== y && !(pair.neutralizes && !x.additive && !y.additive);
  const left = one.filter(x => other.some(y => reacts(x, y)));
  const right = other.filter(y => left.some(x => reacts(x, y)));
  if (left.length === 0) return [];
  const sources = [mixtureCite, ...(pair.neutralizes ? [additivityCite] : []), ...pair.source];
  return [
    {
      id: 'reactive-constituents',
      pair: pair.id,
      dilute: isDilute(pair, left, mixture, scale),
      left: left.map(shareOf),
      right: right.map(shareOf),
      advice: adviceOf(pair, mixture, scale),
      pH: mixture.properties.pH?.value ?? null,
      cites: sources.map(bySource),
    },
  ];
}

const sideOf = (
  scale: Scale,
  pair: ReactivePair,
  grouped: Grouped,
  ids: readonly string[],
  from = reactiveFrom,
): Ingredient[] =>
  grouped
    .filter(
      ({ ingredient, groups }) =>
        ids.some(id => groups.has(id)) &&
        scale.reaches(ingredient.percent, from) &&
        !(ingredient.cas && pair.excludeCas?.includes(ingredient.cas)),
    )
    .map(({ ingredient }) => ingredient);

const shareOf = ({ index, percent }: Ingredient) => ({ constituent: index, amount: percent });

function adviceOf(
  { neutralizes, quietFromPh }: ReactivePair,
  { properties: { pH } }: Mixture,
  scale: Scale,
): ReactiveAdvice {
  if (neutralizes) return 'reckon-the-salt';
  const isSalt = quietFromPh !== undefined && pH && scale.reaches(pH.value, quietFromPh);
  return isSalt ? 'salt-at-this-ph' : 'does-not-hold';
}
