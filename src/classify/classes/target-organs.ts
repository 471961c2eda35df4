import type { Hazard, Route } from '../../notation/hazard.ts';
import { always, type ClassRule } from '../class-rule.ts';
import { type ClassResult, type Context, hazardIn } from '../context.ts';
import { ofHealth, type Provision } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';
import { hazardsOf } from '../ingredient.ts';
import {
  becauseOfCandidates,
  byIngredient,
  type Candidate,
  cutOffOf,
  type Trigger,
} from './by-ingredient.ts';

const targetOrgans = (name: string): ClassRule => ({
  listed: name,
  categories: ['1', '2'],
  isOf: always,
  judge: context => [judge(context, name)],
  limitedBy: [name],
  cutOff: ({ byIngredient: tables }, category) => cutOffOf(tables[name], category),
});

/**
 * Specific target organ toxicity, Categories 1 and 2, single and repeated exposure: A.8.3.4.1 with Table A.8.2,
 * A.9.3.4.1 with Table A.9.3; CLP and UN 3.8.3.4.1, 3.9.3.4.1. Not additive. Organs that reach Category 2 alone stand
 * beside those of Category 1: all statements and all organs are due (C.2.2.1; CLP Annex I, 3.8.2, 3.9.2).
 */
export const targetOrgansOnce = targetOrgans('STOT SE');
/** Repeated exposure, as above. */
export const targetOrgansRepeatedly = targetOrgans('STOT RE');

function judge(context: Context, hazardClass: string): ClassResult {
  const table = context.basis.byIngredient[hazardClass]!;
  const { result, triggers, reached } = byIngredient(context, hazardClass, table);
  if (result.outcome !== 'classified') return result;
  const disputed = table.category1DisputedBelow?.percent;
  const depends =
    disputed !== undefined &&
    triggers.some(
      ({ own, ingredient }) => own === '1' && context.scale.compare(ingredient.percent, disputed) < 0,
    );
  const found = named(hazardClass, triggers);
  const milder = result.hazard.category === '1' ? milderOrgans(hazardClass, reached, found) : [];
  const both = context.take('stot-worst-category') === 'both';
  const cites = [ofHealth(context.basis, table.cite)];
  const hidden = both ? [] : milder.map(trigger => hiddenOrgan(hazardClass, trigger, cites));
  const beside =
    both && milder.length > 0
      ? {
          ...hazardIn(hazardClass, '2'),
          ...shown(named(hazardClass, milder)),
          because: becauseOfCandidates(context, hazardClass, table, milder),
        }
      : null;
  return {
    ...result,
    hazard: { ...result.hazard, ...shown(found) },
    ...(beside && { beside }),
    readings: [
      ...(result.readings ?? []),
      ...(depends ? (['stot-1-below-ten'] as const) : []),
      ...(milder.length > 0 ? (['stot-worst-category'] as const) : []),
    ],
    warnings: [...hidden, ...unnamedOrgans(hazardClass, triggers, found, cites)],
  };
}

/** Hazards by which a trigger is one: those of its own category; all of the class where a limit alone triggers. */
function hazardsBehind(hazardClass: string, { ingredient, own }: Trigger): readonly Hazard[] {
  const all = hazardsOf(ingredient, hazardClass).filter(({ category }) => category !== '3');
  const same = all.filter(({ category }) => category === own);
  return same.length > 0 ? same : all;
}

const named = (hazardClass: string, triggers: readonly Trigger[]): readonly Hazard[] =>
  triggers.flatMap(trigger => hazardsBehind(hazardClass, trigger));

/** Organs and route that a statement may name: no organ where one of them is not known, since a list reads as complete. */
function shown(hazards: readonly Hazard[]): {
  readonly organs: readonly string[];
  readonly route: Route | null;
} {
  const complete = hazards.every(({ organs }) => organs.length > 0);
  const routes = [...new Set(hazards.map(({ route }) => route))];
  return {
    organs: complete ? [...new Set(hazards.flatMap(({ organs }) => organs))] : [],
    route: routes.length === 1 ? routes[0]! : null,
  };
}

/** What reaches Category 2 for an organ that Category 1 of the mixture does not name; beside none, one that is not named says no more. */
function milderOrgans(
  hazardClass: string,
  reached: readonly Candidate[],
  severe: readonly Hazard[],
): readonly Candidate[] {
  const known = new Set(shown(severe).organs);
  return reached
    .filter(({ result }) => result === '2')
    .filter(candidate =>
      hazardsBehind(hazardClass, candidate).some(
        hazard =>
          !severe.includes(hazard) &&
          (hazard.organs.length === 0 ? known.size > 0 : hazard.organs.some(organ => !known.has(organ))),
      ),
    );
}

const hiddenOrgan = (hazardClass: string, trigger: Trigger, cites: readonly Provision[]): Warning => ({
  id: 'stot-other-organ',
  class: hazardClass,
  constituent: trigger.ingredient.index,
  amount: trigger.ingredient.percent,
  organs: hazardsBehind(hazardClass, trigger).flatMap(({ organs }) => organs),
  cites,
});

/** Ingredients without an organ beside others that name theirs. */
function unnamedOrgans(
  hazardClass: string,
  triggers: readonly Trigger[],
  hazards: readonly Hazard[],
  cites: readonly Provision[],
): Warning[] {
  const organs = [...new Set(hazards.flatMap(hazard => hazard.organs))];
  if (organs.length === 0) return [];
  const without = triggers.filter(trigger =>
    hazardsBehind(hazardClass, trigger).some(hazard => hazard.organs.length === 0),
  );
  return [...new Set(without.map(({ ingredient }) => ingredient.index))].map(constituent => ({
    id: 'stot-organ-missing',
    class: hazardClass,
    constituent,
    organs,
    cites,
  }));
}
