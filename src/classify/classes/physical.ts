import type { Hazard } from '../../notation/hazard.ts';
import { compare, reaches, show } from '../../quantity/sum.ts';
import type { Basis } from '../../reference/thresholds.ts';
import { constant } from '../constant.ts';
import { type ClassResult, type Context, citePhysical, plainHazard } from '../context.ts';
import { concerns, hazardsOf, type Ingredient, limitsOf } from '../ingredient.ts';
import { becauseOfNone, becauseOfOne } from '../sums.ts';
import { organicPeroxides } from './_available-oxygen.ts';
import { overLow } from './by-ingredient.ts';

/**
 * Physical classes other than flammable liquids (App. B; CLP and UN part 2). They follow from tests, which stand in
 * the record as evidence; here only what the ingredients say is judged: a product that is one substance takes that
 * substance's class, a specific limit decides where it applies, and an ingredient of the class leaves it open. Organic
 * peroxides have a calculation of their own.
 */
export function physical(context: Context): ClassResult[] {
  const { basis, mixture } = context;
  return basis.physicalClasses.map((entry): ClassResult => {
    const { class: hazardClass, forms } = entry;
    if (!forms.includes(mixture.form))
      return constant(basis, `${hazardClass} ${mixture.form}`, () => wrongForm(context, entry));
    if (hazardClass !== 'Met. Corr.' && !concerns(mixture, hazardClass))
      return constant(basis, hazardClass, () => undecided(context, hazardClass, [], citeOf(basis, entry)));
    const concerned = mixture.ingredients.filter(ingredient => hazardsOf(ingredient, hazardClass).length > 0);
    const cite = citeOf(basis, entry);
    return (
      asSubstance(hazardClass, concerned, cite) ??
      bySpecificLimit(context, hazardClass, cite) ??
      (hazardClass === 'Org. Perox.'
        ? organicPeroxides(context)
        : undecided(context, hazardClass, concerned, cite))
    );
  });
}

type PhysicalClass = Basis['physicalClasses'][number];

const citeOf = (basis: Basis, { instrument, cite }: PhysicalClass): string =>
  instrument ? `${instrument}, ${cite}` : citePhysical(basis, cite);

const wrongForm = ({ basis, mixture }: Context, entry: PhysicalClass): ClassResult => ({
  class: entry.class,
  outcome: 'not-applicable',
  because: becauseOfNone(
    'physical form',
    citeOf(basis, entry),
    `the class is for ${entry.forms.join(' or ')}, the product is ${mixture.form}`,
  ),
});

const asHazard = ({ hazardClass, category, statement }: Hazard) =>
  plainHazard(hazardClass, category, statement ? [statement] : []);

function asSubstance(
  hazardClass: string,
  concerned: readonly Ingredient[],
  cite: string,
): ClassResult | null {
  const [only] = concerned;
  if (!only || compare(only.percent, 100) < 0) return null;
  const because = becauseOfNone(
    'single substance',
    cite,
    `the product is ${only.name} alone, which is classified ${hazardClass}`,
  );
  return {
    class: hazardClass,
    outcome: 'classified',
    hazard: asHazard(hazardsOf(only, hazardClass)[0]!),
    because,
  };
}

function bySpecificLimit(
  { basis, mixture, applyLimits }: Context,
  hazardClass: string,
  cite: string,
): ClassResult | null {
  if (!applyLimits) return null;
  for (const ingredient of mixture.ingredients) {
    const limits = limitsOf(ingredient, hazardClass).filter(({ low }) => low !== null);
    if (limits.length === 0) continue;
    const sorted = [...limits].sort((a, b) => (a.category < b.category ? -1 : 1));
    const reached = sorted.find(limit => overLow(ingredient.percent, limit));
    const rule = 'specific concentration limit';
    const cites = `${cite}; ${basis.specificLimits.cite}`;
    if (reached)
      return {
        class: hazardClass,
        outcome: 'classified',
        hazard: plainHazard(hazardClass, reached.category, reached.statement ? [reached.statement] : []),
        because: becauseOfOne(ingredient, reached.low!.value, true, rule, cites),
      };
    const lowest = sorted.at(-1)!;
    return {
      class: hazardClass,
      outcome: 'not-classified',
      because: becauseOfOne(ingredient, lowest.low!.value, false, rule, cites),
    };
  }
  return null;
}

function undecided(
  context: Context,
  hazardClass: string,
  concerned: readonly Ingredient[],
  cite: string,
): ClassResult {
  const pointing = concerned.map(
    ({ name, percent, data }) =>
      `${show(percent.value)} % ${name}, itself ${data.hazards.find(hazard => hazard.hazardClass === hazardClass)!.code}`,
  );
  if (hazardClass === 'Met. Corr.') pointing.push(...corrosiveToMetalsSigns(context));
  if (pointing.length > 0)
    return {
      class: hazardClass,
      outcome: 'insufficient-data',
      because: becauseOfNone(
        'test result needed',
        cite,
        `${pointing.join('; ')}: no test result in the record decides`,
      ),
    };
  return {
    class: hazardClass,
    outcome: 'not-classified',
    because: becauseOfNone(
      'screening by ingredients',
      cite,
      'no ingredient is classified for this hazard, and the record holds no test result',
    ),
    floor: context.basis.physicalScreening.relevantFrom.percent,
  };
}

/** An extreme pH or a corrosive ingredient points to corrosion of metals without deciding it (common practice, no source). */
function corrosiveToMetalsSigns({ mixture, basis }: Context): string[] {
  const pH = mixture.properties.pH?.value;
  const { acid, base } = basis.skin.extremePh;
  const signs: string[] = [];
  if (pH && (compare(pH, acid) <= 0 || reaches(pH, base))) signs.push(`pH ${show(pH.value)}`);
  for (const ingredient of mixture.ingredients)
    if (
      hazardsOf(ingredient, 'Skin Corr.').length > 0 &&
      reaches(ingredient.percent, basis.skin.relevantFrom.percent)
    )
      signs.push(`${show(ingredient.percent.value)} % ${ingredient.name}, corrosive to skin`);
  return signs;
}
