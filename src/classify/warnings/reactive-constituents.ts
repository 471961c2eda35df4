import type { Scale } from '../../quantity/scale.ts';
import { bySource } from '../facts/provision.ts';
import type { ReactiveAdvice, Warning } from '../facts/warning.ts';
import type { Ingredient, Mixture } from '../ingredient.ts';
import {
  additivityCite,
  type Grouped,
  groupedIn,
  mixtureCite,
  pairsWith,
  type ReactivePair,
  reactiveFrom,
} from '../reactivity.ts';

/**
 * Constituents that react with each other when mixed: toxic gas, fire, pressure or heat may come of it, and a
 * calculation from the ingredients does not hold for what forms, since the substances of a mixture do not react (29 CFR
 * 1910.1200(c), definition of mixture). The worst danger first, one warning for each pair of groups. Groups and pairs
 * after EPA-600/2-80-076, 40 CFR 264 App. V and agency notes, each pair with its source.
 * @param mixture at the concentrations to judge; the upper ends where ranges are given.
 * @param all its ingredients with their groups, where they are known already.
 */
export function reactiveConstituents(
  mixture: Mixture,
  scale: Scale,
  all: readonly Grouped[] = groupedIn(mixture.ingredients),
): Warning[] {
  const grouped = all.filter(({ ingredient }) => scale.reaches(ingredient.percent, reactiveFrom));
  if (grouped.length < 2) return [];
  const present = new Set<string>();
  for (const { groups } of grouped) for (const group of groups) present.add(group);
  const warnings: Warning[] = [];
  for (const pair of pairsWith(present)) {
    if (!pair.b.some(group => present.has(group))) continue;
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

function warningOf(
  pair: ReactivePair,
  grouped: readonly Grouped[],
  mixture: Mixture,
  scale: Scale,
): Warning[] {
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
  grouped: readonly Grouped[],
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
