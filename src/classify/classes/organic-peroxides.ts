import { Exact } from '../../quantity/exact.ts';
import { exactSum, type Part, sumOf, tidy } from '../../quantity/sum.ts';
import type { OrganicPeroxideRules } from '../../reference/thresholds.ts';
import type { ClassResult, Context } from '../context.ts';
import type { Because } from '../facts/because.ts';
import { ofPhysical } from '../facts/provision.ts';
import { hazardsOf, type Ingredient, type Mixture } from '../ingredient.ts';
import { objective, objectives } from '../ranges/objective.ts';
import { physicalClass } from './physical.ts';

const CLASS = 'Org. Perox.';

/** Organic peroxides: B.15; CLP and UN 2.15. */
export const organicPeroxides = physicalClass(CLASS, {
  decide: byAvailableOxygen,
  objectives: ({ mixture, basis }) =>
    objectives(
      objective(mixture, ({ data: { peroxide } }) =>
        peroxide ? peroxide.groups / peroxide.molarMass.value : 0,
      ),
      objective(mixture, ingredient => (isHydrogenPeroxide(basis.organicPeroxides)(ingredient) ? 1 : 0)),
    ),
});

const isPeroxide = (ingredient: Ingredient): boolean =>
  ingredient.data.peroxide !== null || hazardsOf(ingredient, CLASS).length > 0;

/** Each peroxide's share: oxygen x groups x percent / molar mass. Null where one has no data. */
function oxygenParts(
  peroxides: readonly Ingredient[],
  { formula }: OrganicPeroxideRules,
): readonly Part[] | null {
  const parts: Part[] = [];
  for (const { percent, data } of peroxides) {
    if (!data.peroxide) return null;
    const { groups, molarMass } = data.peroxide;
    parts.push({ amount: percent, weight: formula.oxygen * groups, over: molarMass });
  }
  return parts;
}

/**
 * Available oxygen of the organic peroxides of a mixture in percent, exact: 16 times the sum of groups x percent / molar
 * mass (Note to B.15.2.1; CLP and UN 2.15.2.1). Null where an organic peroxide has no data.
 */
export function availableOxygen(mixture: Mixture, rules: OrganicPeroxideRules): Exact | null {
  const parts = oxygenParts(mixture.ingredients.filter(isPeroxide), rules);
  return parts && Exact.fraction(exactSum(parts));
}

/**
 * Mixtures with organic peroxides: not considered for the class where available oxygen and hydrogen peroxide are low
 * (B.15.2.1; CLP and UN 2.15.2.1); else types A to G follow from tests (B.15.2.2).
 */
function byAvailableOxygen({ basis, mixture, scale }: Context): ClassResult {
  const rules = basis.organicPeroxides;
  const peroxides = mixture.ingredients.filter(isPeroxide);
  const parts = oxygenParts(peroxides, rules);
  const types = ofPhysical(basis, rules.types.cite);
  if (!parts) {
    const because: Because = {
      kind: 'peroxide-data',
      cites: [ofPhysical(basis, rules.cite)],
      peroxides: peroxides.map(ingredient => ({
        constituent: ingredient.index,
        amount: ingredient.percent,
        code: hazardsOf(ingredient, CLASS)[0]?.code ?? null,
      })),
      without: peroxides.filter(({ data }) => !data.peroxide).map(({ index }) => index),
      types,
    };
    return { class: CLASS, outcome: 'insufficient-data', because };
  }

  const peroxide = mixture.ingredients.filter(isHydrogenPeroxide(rules));
  const peroxideParts = peroxide.map(({ percent }) => ({ amount: percent, weight: 1 }));
  const row = rules.exempt.find(
    ({ hydrogenPeroxide }) => scale.compareSum(peroxideParts, hydrogenPeroxide) <= 0,
  );
  const exempt = row !== undefined && scale.compareSum(parts, row.availableOxygen) <= 0;
  const because: Because = {
    kind: 'oxygen',
    cites: [ofPhysical(basis, `${row?.cite ?? rules.cite}, ${rules.formula.cite}`)],
    terms: peroxides.map(({ index, percent, data }) => ({
      constituent: index,
      amount: percent,
      weight: 1,
      groups: data.peroxide!.groups,
      over: data.peroxide!.molarMass,
    })),
    oxygen: rules.formula.oxygen,
    total: tidy(sumOf(parts)),
    limit: row?.availableOxygen ?? null,
    exempt,
    hydrogenPeroxide: {
      total: tidy(sumOf(peroxideParts)),
      limit: (row ?? rules.exempt.at(-1)!).hydrogenPeroxide,
      reached: row === undefined,
    },
    types,
  };
  if (!exempt) return { class: CLASS, outcome: 'insufficient-data', because };
  const floor = basis.physicalScreening.relevantFrom.percent;
  return { class: CLASS, outcome: 'not-classified', because, floor };
}

/** Whether an ingredient is hydrogen peroxide, by number or by name. */
const isHydrogenPeroxide =
  ({ hydrogenPeroxide }: OrganicPeroxideRules) =>
  ({ cas, name }: Ingredient): boolean =>
    cas === null ? name.toLowerCase() === hydrogenPeroxide.name : cas === hydrogenPeroxide.cas;
