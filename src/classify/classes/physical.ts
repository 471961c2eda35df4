import type { Hazard } from '../../notation/hazard.ts';
import type { Basis, PhysicalClassRules } from '../../reference/thresholds.ts';
import { constant } from '../constant.ts';
import { type ClassResult, type Context, plainHazard } from '../context.ts';
import type { Sign } from '../facts/physical.ts';
import { ofPhysical, type Provision } from '../facts/provision.ts';
import { concerns, hazardsOf, type Ingredient, type Mixture } from '../ingredient.ts';
import { isOpenCode, outsideBasis } from '../outside-basis.ts';
import { type Objective, objective, objectives } from '../ranges/objective.ts';
import { isHydrogenPeroxide, organicPeroxides } from './_available-oxygen.ts';
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
  const wrongForms = constant(basis, `not for ${mixture.form}`, () => wrongFormsOf(context));
  return basis.physicalClasses.map(entry => wrongForms.get(entry.class) ?? physicalClass(context, entry));
}

function physicalClass(context: Context, entry: PhysicalClassRules): ClassResult {
  const { basis, mixture } = context;
  const { class: hazardClass } = entry;
  if (hazardClass === 'Aerosol') return aerosol(context);
  if (hazardClass !== 'Met. Corr.' && !isConcerned(mixture, entry)) {
    const onlyWater = mixture.ingredients.every(({ water }) => water);
    return constant(basis, onlyWater ? `${hazardClass} of water` : hazardClass, () =>
      undecided(context, entry),
    );
  }
  const cite = citeOf(basis, entry);
  return (
    asSubstance(context, entry, cite) ??
    byOwnLimits(context, hazardClass, cite) ??
    (hazardClass === 'Pyr. Gas' ? pyrophoricMixture(context, entry, cite) : null) ??
    (hazardClass === 'Org. Perox.' ? organicPeroxides(context) : undecided(context, entry))
  );
}

/** Physical classes that add up their ingredients, and which way each sum gets worse. */
export const physicalObjectives = ({
  mixture,
  basis,
}: Context): Readonly<Record<string, readonly Objective[]>> => ({
  Aerosol: objectives(
    objective(mixture, ingredient =>
      basis.aerosols.flammable.some(name => hazardsOf(ingredient, name).length > 0) ? 1 : 0,
    ),
  ),
  'Pyr. Gas': objectives(
    objective(mixture, ingredient => (hazardsOf(ingredient, 'Pyr. Gas').length > 0 ? 1 : 0)),
  ),
  'Org. Perox.': objectives(
    objective(mixture, ({ data: { peroxide } }) =>
      peroxide ? peroxide.groups / peroxide.molarMass.value : 0,
    ),
    objective(mixture, ingredient => (isHydrogenPeroxide(basis.organicPeroxides)(ingredient) ? 1 : 0)),
  ),
});

// Asked for every class of every product; most have no neighbours.
const isConcerned = (mixture: Mixture, { class: own, members, openedBy }: PhysicalClassRules): boolean =>
  concerns(mixture, own) ||
  (members !== undefined && concerns(mixture, ...members)) ||
  (openedBy !== undefined && concerns(mixture, ...openedBy));

const citeOf = (basis: Basis, { instrument, criteria }: PhysicalClassRules): Provision =>
  ofPhysical(basis, criteria, instrument);

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
    because: {
      kind: 'form',
      forms,
      form: mixture.form,
      cites: [ofPhysical(basis, `${cite}${note}`, instrument)],
    },
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

function asSubstance(
  { mixture, scale, basis }: Context,
  entry: PhysicalClassRules,
  cite: Provision,
): ClassResult | null {
  const only = mixture.ingredients.find(
    ingredient => ingredient.percent.value > 0 && ownHazards(ingredient, entry).length > 0,
  );
  if (!only || scale.compare(only.percent, 100) < 0) return null;
  const named = ownHazards(only, entry).find(
    ({ code }) => !isOpenCode(code) && outsideBasis(basis, code) === null,
  );
  if (!named) return null;
  const { hazardClass, category: written, statement } = named;
  const category = entry.renamed?.[written] ?? written;
  const hazard = plainHazard(hazardClass, category, statement ? [statement] : []);
  const because = {
    kind: 'substance',
    constituent: only.index,
    code: hazard.code,
    cites: [cite],
  } as const;
  return { class: entry.class, outcome: 'classified', hazard, because };
}

/** A class that only a test decides: open where anything points to it, else not given after a look at the ingredients. */
function undecided(context: Context, entry: PhysicalClassRules): ClassResult {
  const { basis, mixture } = context;
  const { class: name, notFromIngredients } = entry;
  const cite = citeOf(basis, entry);
  const signs = mixture.ingredients.flatMap(ingredient => signOf(context, ingredient, entry));
  if (name === 'Met. Corr.') signs.push(...corrosiveToMetalsSigns(context));
  if (signs.length > 0 || notFromIngredients)
    return {
      class: name,
      outcome: 'insufficient-data',
      because: {
        kind: 'signs',
        class: name,
        signs,
        notFromIngredients: notFromIngredients !== undefined,
        cites: [cite],
      },
    };
  return {
    class: name,
    outcome: 'not-classified',
    because: {
      kind: 'screening',
      classes: [name, ...(entry.members ?? []), ...(entry.openedBy ?? [])],
      cites: [cite],
    },
    readings: mixture.ingredients.every(({ water }) => water) ? [] : ['physical-screening'],
    floor: basis.physicalScreening.relevantFrom.percent,
  };
}

/** What an ingredient of the class, or of a neighbouring one from the percent of the screening up, says. */
function signOf({ basis, scale }: Context, ingredient: Ingredient, entry: PhysicalClassRules): Sign[] {
  const { index, percent } = ingredient;
  if (percent.value === 0) return [];
  const told = ({ code }: Hazard): Sign[] => [
    { kind: 'ingredient', constituent: index, amount: percent, code },
  ];
  const [own] = ownHazards(ingredient, entry);
  if (own) return told(own);
  const near = entry.openedBy?.flatMap(other => hazardsOf(ingredient, other))[0];
  return near && scale.reaches(percent, basis.physicalScreening.relevantFrom.percent) ? told(near) : [];
}

/** An extreme pH or a corrosive ingredient points to corrosion of metals without deciding it (common practice, no source). */
function corrosiveToMetalsSigns({ mixture, basis, scale }: Context): Sign[] {
  const pH = mixture.properties.pH?.value;
  const { acid, base } = basis.skin.extremePh;
  const signs: Sign[] = [];
  if (pH && (scale.compare(pH, acid) <= 0 || scale.reaches(pH, base))) signs.push({ kind: 'ph', pH });
  for (const ingredient of mixture.ingredients)
    if (
      hazardsOf(ingredient, 'Skin Corr.').length > 0 &&
      scale.reaches(ingredient.percent, basis.skin.relevantFrom.percent)
    )
      signs.push({ kind: 'corrosive', constituent: ingredient.index, amount: ingredient.percent });
  return signs;
}
