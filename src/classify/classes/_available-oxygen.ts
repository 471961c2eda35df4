import { Exact } from '../../quantity/exact.ts';
import { compareSum, exactSum, type Part, show, showBeside, sumOf, tidy } from '../../quantity/sum.ts';
import type { OrganicPeroxideRules } from '../../reference/thresholds.ts';
import { type ClassResult, type Context, citePhysical } from '../context.ts';
import { hazardsOf, type Ingredient, type Mixture } from '../ingredient.ts';
import { reason } from '../reasons.ts';
import { becauseOfNone } from '../sums.ts';

const CLASS = 'Org. Perox.';

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
export function organicPeroxides({ basis, mixture }: Context): ClassResult {
  const rules = basis.organicPeroxides;
  const peroxides = mixture.ingredients.filter(isPeroxide);
  const parts = oxygenParts(peroxides, rules);
  const tests = `types A to G follow from tests (${rules.types.cite})`;
  if (!parts) {
    const names = peroxides.filter(({ data }) => !data.peroxide).map(({ name }) => name);
    const working = `contains ${peroxides.map(told).join(', ')}; available oxygen is not known without \`peroxide\` of ${names.join(', ')}; ${tests}`;
    return {
      class: CLASS,
      outcome: 'insufficient-data',
      because: becauseOfNone('test result needed', citePhysical(basis, rules.cite), working),
    };
  }

  const peroxide = mixture.ingredients.filter(isHydrogenPeroxide(rules));
  const peroxideParts = peroxide.map(({ percent }) => ({ amount: percent, weight: 1 }));
  const row = rules.exempt.find(({ hydrogenPeroxide }) => compareSum(peroxideParts, hydrogenPeroxide) <= 0);
  const exempt = row !== undefined && compareSum(parts, row.availableOxygen) <= 0;
  const because = reason(() => {
    const total = tidy(sumOf(parts));
    const limit = row?.availableOxygen;
    const products = peroxides.map(
      ({ percent, name, data }) =>
        `${data.peroxide!.groups} x ${show(percent.value)} / ${show(data.peroxide!.molarMass.value)} ${name}`,
    );
    const compared = limit === undefined ? '' : ` ${exempt ? '<=' : '>'} ${show(limit)} %`;
    const bound = row ?? rules.exempt.at(-1)!;
    const hydrogen = tidy(sumOf(peroxideParts));
    const share = `hydrogen peroxide ${showBeside(hydrogen, bound.hydrogenPeroxide)} % ${row ? '<=' : '>'} ${show(bound.hydrogenPeroxide)} %`;
    return {
      rule: 'available oxygen',
      cite: citePhysical(basis, `${row?.cite ?? rules.cite}, ${rules.formula.cite}`),
      working: `${show(rules.formula.oxygen)} x (${products.join(' + ')}) = ${limit === undefined ? show(total) : showBeside(total, limit)} % available oxygen${compared}; ${share}${exempt ? '' : `; ${tests}`}`,
      total,
      ...(limit !== undefined && { limit }),
      unit: '%',
      terms: peroxides.map(({ name, percent }) => ({ name, percent: percent.value, weight: 1 })),
    };
  });
  return exempt
    ? {
        class: CLASS,
        outcome: 'not-classified',
        because,
        floor: basis.physicalScreening.relevantFrom.percent,
      }
    : { class: CLASS, outcome: 'insufficient-data', because };
}

const told = (ingredient: Ingredient): string => {
  const [hazard] = hazardsOf(ingredient, CLASS);
  return `${show(ingredient.percent.value)} % ${ingredient.name}${hazard ? `, itself ${hazard.code}` : ''}`;
};

const isHydrogenPeroxide =
  ({ hydrogenPeroxide }: OrganicPeroxideRules) =>
  ({ cas, name }: Ingredient): boolean =>
    cas === null ? name.toLowerCase() === hydrogenPeroxide.name : cas === hydrogenPeroxide.cas;
