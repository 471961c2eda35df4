import type { Hazard } from '../../notation/hazard.ts';
import type { Basis, PhysicalClassRules } from '../../reference/thresholds.ts';
import type { ClassRule } from '../class-rule.ts';
import { noCutOff } from '../class-rule.ts';
import { constant, keysByForm } from '../constant.ts';
import { type ClassResult, type Context, hazardIn } from '../context.ts';
import type { Sign } from '../facts/physical.ts';
import { ofPhysical, type Provision } from '../facts/provision.ts';
import { concerns, hazardsOf, type Ingredient, type Mixture } from '../ingredient.ts';
import { isOpenCode, outsideBasis } from '../outside-basis.ts';
import { byOwnLimits } from './_own-limits.ts';

/** What a physical class has besides what all of them have. */
export interface PhysicalRule extends Partial<Pick<ClassRule, 'objectives'>> {
  /** A rule of its own in place of all that follows. */
  readonly own?: (context: Context) => ClassResult;
  /** What the ingredients decide; null where they do not. */
  readonly decide?: (context: Context, entry: PhysicalClassRules, cite: Provision) => ClassResult | null;
  /** What points to the class in a mixture without an ingredient of it. */
  readonly signs?: (context: Context) => readonly Sign[];
}

/** The rules of a basis on a physical class; undefined where it has not got the class. */
const entryOf = (basis: Basis, name: string): PhysicalClassRules | undefined => basis.physicalClasses[name];

/**
 * A physical class (App. B; CLP and UN part 2). It follows from tests, which stand in the record as evidence; here only
 * what the ingredients say is judged: a product that is one substance takes that substance's class, a specific limit
 * decides where it applies, and an ingredient of the class or of a neighbouring one leaves it open.
 */
export function physicalClass(name: string, rule: PhysicalRule = {}): ClassRule {
  const notFor = keysByForm(`${name} is not for the form`);
  const ofWater = `${name} of water`;
  return {
    listed: name,
    isOf: basis => entryOf(basis, name) !== undefined,
    judge: context => {
      const { basis, mixture } = context;
      const entry = entryOf(basis, name);
      if (!entry) return [];
      if (!entry.forms.includes(mixture.form))
        return constant(basis, notFor[mixture.form], () => [wrongForm(context, name, entry)]);
      if (rule.own) return [rule.own(context)];
      if (rule.signs || isConcerned(mixture, name, entry)) return [judge(context, name, entry, rule)];
      const onlyWater = mixture.ingredients.every(({ water }) => water);
      return constant(basis, onlyWater ? ofWater : name, () => [undecided(context, name, entry, rule)]);
    },
    objectives: rule.objectives,
    limitedBy: [name],
    cutOff: noCutOff,
    criteria: basis => {
      const entry = entryOf(basis, name);
      return entry ? citeOf(basis, entry) : null;
    },
  };
}

function judge(context: Context, name: string, entry: PhysicalClassRules, rule: PhysicalRule): ClassResult {
  const cite = citeOf(context.basis, entry);
  return (
    asSubstance(context, name, entry, cite) ??
    byOwnLimits(context, name, cite) ??
    rule.decide?.(context, entry, cite) ??
    undecided(context, name, entry, rule)
  );
}

// Asked for every class of every product; most have no neighbours.
const isConcerned = (mixture: Mixture, own: string, { members, openedBy }: PhysicalClassRules): boolean =>
  mixture.classes.has(own) ||
  (members !== undefined && concerns(mixture, members)) ||
  (openedBy !== undefined && concerns(mixture, openedBy));

const citeOf = (basis: Basis, { instrument, criteria }: PhysicalClassRules): Provision =>
  ofPhysical(basis, criteria, instrument);

/** The outcome for a physical form that a class is not for. */
export function wrongForm(
  { basis, mixture }: Context,
  name: string,
  { forms, instrument, cite }: Omit<PhysicalClassRules, 'criteria'>,
): ClassResult {
  const { notBeside } = basis.aerosols;
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

/** Hazards of an ingredient that are judged as the class itself. */
const ownHazards = (
  ingredient: Ingredient,
  own: string,
  { members = [] }: PhysicalClassRules,
): readonly Hazard[] =>
  members.length === 0
    ? hazardsOf(ingredient, own)
    : [own, ...members].flatMap(name => hazardsOf(ingredient, name));

function asSubstance(
  { mixture, scale, basis }: Context,
  name: string,
  entry: PhysicalClassRules,
  cite: Provision,
): ClassResult | null {
  const only = mixture.ingredients.find(
    ingredient => ingredient.percent.value > 0 && ownHazards(ingredient, name, entry).length > 0,
  );
  if (!only || scale.compare(only.percent, 100) < 0) return null;
  const named = ownHazards(only, name, entry).find(
    ({ code }) => !isOpenCode(code) && outsideBasis(basis, code) === null,
  );
  if (!named) return null;
  const { hazardClass, category: written, statement } = named;
  const category = entry.renamed?.[written] ?? written;
  const hazard = hazardIn(hazardClass, category, { statements: statement ? [statement] : [] });
  const because = {
    kind: 'substance',
    constituent: only.index,
    code: hazard.code,
    cites: [cite],
  } as const;
  return { class: name, outcome: 'classified', hazard, because };
}

/** A class that only a test decides: open where anything points to it, else not given after a look at the ingredients. */
function undecided(
  context: Context,
  name: string,
  entry: PhysicalClassRules,
  rule: PhysicalRule,
): ClassResult {
  const { basis, mixture } = context;
  const { notFromIngredients } = entry;
  const cite = citeOf(basis, entry);
  const signs = mixture.ingredients.flatMap(ingredient => signOf(context, ingredient, name, entry));
  if (rule.signs) signs.push(...rule.signs(context));
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
function signOf(
  { basis, scale }: Context,
  ingredient: Ingredient,
  name: string,
  entry: PhysicalClassRules,
): Sign[] {
  const { index, percent } = ingredient;
  if (percent.value === 0) return [];
  const told = ({ code }: Hazard): Sign[] => [
    { kind: 'ingredient', constituent: index, amount: percent, code },
  ];
  const [own] = ownHazards(ingredient, name, entry);
  if (own) return told(own);
  const near = entry.openedBy?.flatMap(other => hazardsOf(ingredient, other))[0];
  return near && scale.reaches(percent, basis.physicalScreening.relevantFrom.percent) ? told(near) : [];
}
