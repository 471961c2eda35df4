import type { Hazard } from '../../notation/hazard.ts';
import { compare, reaches, show } from '../../quantity/sum.ts';
import type { PhysicalForm } from '../../record/product-record.ts';
import type { Basis, PhysicalClassRules } from '../../reference/thresholds.ts';
import { constant } from '../constant.ts';
import { type ClassResult, type Context, citePhysical, plainHazard } from '../context.ts';
import { concerns, hazardsOf, type Ingredient, type Mixture } from '../ingredient.ts';
import { reason } from '../reasons.ts';
import { becauseOfNone } from '../sums.ts';
import { organicPeroxides } from './_available-oxygen.ts';
import { byOwnLimits } from './_own-limits.ts';
import { pyrophoricMixture } from './_pyrophoric-mixture.ts';
import { aerosol } from './aerosols.ts';

/**
 * Physical classes other than flammable liquids (App. B; CLP and UN part 2). They follow from tests, which stand in
 * the record as evidence; here only what the ingredients say is judged: a product that is one substance takes that
 * substance's class, a specific limit decides where it applies, and an ingredient of the class or of a neighbouring
 * one leaves it open. Aerosols, pyrophoric gas mixtures and organic peroxides have rules of their own.
 */
export function physical(context: Context): ClassResult[] {
  const { basis, mixture } = context;
  const onlyWater = mixture.ingredients.every(({ water }) => water);
  const wrongForms = constant(basis, `not for ${mixture.form}`, () => wrongFormsOf(context));
  return basis.physicalClasses.map((entry): ClassResult => {
    const { class: hazardClass } = entry;
    const wrong = wrongForms.get(hazardClass);
    if (wrong) return wrong;
    if (hazardClass === 'Aerosol') return aerosol(context);
    if (hazardClass !== 'Met. Corr.' && !isConcerned(mixture, entry))
      return constant(basis, onlyWater ? `${hazardClass} of water` : hazardClass, () =>
        undecided(context, entry),
      );
    const cite = citeOf(basis, entry);
    return (
      asSubstance(context, entry, cite) ??
      byOwnLimits(context, hazardClass, cite) ??
      (hazardClass === 'Pyr. Gas' ? pyrophoricMixture(context, entry, cite) : null) ??
      (hazardClass === 'Org. Perox.' ? organicPeroxides(context) : undecided(context, entry))
    );
  });
}

// Asked for every class of every product; most have no neighbours.
const isConcerned = (mixture: Mixture, { class: own, members, openedBy }: PhysicalClassRules): boolean =>
  concerns(mixture, own) ||
  (members !== undefined && concerns(mixture, ...members)) ||
  (openedBy !== undefined && concerns(mixture, ...openedBy));

const citeOf = (basis: Basis, { instrument, criteria }: PhysicalClassRules): string =>
  instrument ? `${instrument}, ${criteria}` : citePhysical(basis, criteria);

const formWords: Readonly<Record<PhysicalForm, readonly [one: string, many: string]>> = {
  liquid: ['a liquid', 'liquids'],
  solid: ['a solid', 'solids'],
  gas: ['a gas', 'gases'],
  aerosol: ['an aerosol', 'aerosols'],
};

/** The outcome for a physical form that a class is not for. */
export function wrongForm(
  { basis, mixture }: Context,
  entry: Omit<PhysicalClassRules, 'criteria'>,
): ClassResult {
  const { notBeside } = basis.aerosols;
  const { class: name, forms, instrument, cite } = entry;
  const note = mixture.form === 'aerosol' && notBeside.classes.includes(name) ? `, ${notBeside.cite}` : '';
  return {
    class: name,
    outcome: 'not-applicable',
    because: becauseOfNone(
      'physical form',
      `${instrument ?? basis.physicalInstrument}, ${cite}${note}`,
      `the class is for ${forms.map(form => formWords[form][1]).join(', ')}; the product is ${formWords[mixture.form][0]}`,
    ),
  };
}

const wrongFormsOf = (context: Context): ReadonlyMap<string, ClassResult> =>
  new Map(
    context.basis.physicalClasses
      .filter(({ forms }) => !forms.includes(context.mixture.form))
      .map(entry => [entry.class, wrongForm(context, entry)]),
  );

/** Hazards of an ingredient that are judged as the class itself. */
const ownHazards = (
  ingredient: Ingredient,
  { class: own, members = [] }: PhysicalClassRules,
): readonly Hazard[] =>
  members.length === 0
    ? hazardsOf(ingredient, own)
    : [own, ...members].flatMap(name => hazardsOf(ingredient, name));

function asSubstance({ mixture }: Context, entry: PhysicalClassRules, cite: string): ClassResult | null {
  const only = mixture.ingredients.find(
    ingredient => ingredient.percent.value > 0 && ownHazards(ingredient, entry).length > 0,
  );
  if (!only || compare(only.percent, 100) < 0) return null;
  const { hazardClass, category: written, statement } = ownHazards(only, entry)[0]!;
  const category = entry.renamed?.[written] ?? written;
  const hazard = plainHazard(hazardClass, category, statement ? [statement] : []);
  const because = becauseOfNone(
    'single substance',
    cite,
    `the product is ${only.name} alone, which is classified ${hazard.code}`,
  );
  return { class: entry.class, outcome: 'classified', hazard, because };
}

/** A class that only a test decides: open where anything points to it, else not given after a look at the ingredients. */
function undecided(context: Context, entry: PhysicalClassRules): ClassResult {
  const { basis, mixture } = context;
  const { class: name, notFromIngredients } = entry;
  const cite = citeOf(basis, entry);
  const signs = mixture.ingredients.flatMap(ingredient => signOf(ingredient, entry, basis));
  if (name === 'Met. Corr.') signs.push(...corrosiveToMetalsSigns(context));
  if (signs.length > 0 || notFromIngredients !== undefined)
    return {
      class: name,
      outcome: 'insufficient-data',
      because: reason(() => ({
        rule: 'evidence needed',
        cite,
        working: [
          ...signs,
          ...(notFromIngredients ? [notFromIngredients] : []),
          'no evidence in the record decides',
        ].join('; '),
        terms: [],
      })),
    };
  return {
    class: name,
    outcome: 'not-classified',
    because: becauseOfNone(
      'screening by ingredients',
      cite,
      `no ingredient is classified ${[name, ...(entry.members ?? []), ...(entry.openedBy ?? [])].join(' or ')}; the record holds no test of the product`,
    ),
    readings: mixture.ingredients.every(({ water }) => water) ? [] : ['physical-screening'],
    floor: basis.physicalScreening.relevantFrom.percent,
  };
}

/** What an ingredient of the class, or of a neighbouring one from the percent of the screening up, says. */
function signOf(ingredient: Ingredient, entry: PhysicalClassRules, basis: Basis): string[] {
  const { name, percent } = ingredient;
  if (percent.value === 0) return [];
  const told = ({ code }: Hazard) => [`${show(percent.value)} % ${name}, itself ${code}`];
  const [own] = ownHazards(ingredient, entry);
  if (own) return told(own);
  const near = entry.openedBy?.flatMap(other => hazardsOf(ingredient, other))[0];
  return near && reaches(percent, basis.physicalScreening.relevantFrom.percent) ? told(near) : [];
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
