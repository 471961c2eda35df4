import type { AcuteKey } from '../reference/thresholds.ts';
import { dilutionObjectives } from './bridging.ts';
import { type AcuteSum, acuteObjectives, acuteToxicity } from './classes/acute-toxicity.ts';
import { aquatic, aquaticObjectives } from './classes/aquatic.ts';
import { aspiration, aspirationObjectives } from './classes/aspiration.ts';
import { carcinogenicity } from './classes/carcinogenicity.ts';
import { environmental } from './classes/environmental.ts';
import { eye, eyeObjectives } from './classes/eye.ts';
import { flammableLiquids } from './classes/flammable-liquids.ts';
import { mutagenicity } from './classes/mutagenicity.ts';
import { physical, physicalObjectives } from './classes/physical.ts';
import { reproductiveToxicity } from './classes/reproductive-toxicity.ts';
import { sensitization } from './classes/sensitization.ts';
import { skin, skinObjectives } from './classes/skin.ts';
import { targetOrgans } from './classes/target-organs.ts';
import { transientEffects, transientObjectives } from './classes/transient-effects.ts';
import type { ClassResult, Context } from './context.ts';
import { applyEvidence } from './evidence.ts';
import type { Ingredient } from './ingredient.ts';
import type { Objective } from './ranges/objective.ts';
import type { Spread } from './ranges/spread.ts';

/** The classes of a mixture, with the sums of acute toxicity at each composition that was looked at. */
export interface Classes {
  readonly results: readonly ClassResult[];
  readonly sums: readonly ReadonlyMap<AcuteKey, AcuteSum>[];
}

/** Chooses one of the results that a class has at several compositions. */
export type Choose = (compositions: readonly (readonly ClassResult[])[]) => readonly ClassResult[];

type Rule = (context: Context) => readonly ClassResult[];
type ObjectivesOf = (context: Context) => readonly Objective[];

/** All classes of a mixture in the order of the law, evidence applied, each at the compositions that matter to it. */
export function classesOf(spread: Spread, choose: Choose): Classes {
  const judge = (rule: Rule, objectivesOf: ObjectivesOf): readonly ClassResult[] =>
    choose(spread.at(objectivesOf).map(rule));
  const alone = (rule: Rule): readonly ClassResult[] => choose(spread.each.map(rule));
  const evidenced = (results: readonly ClassResult[]) =>
    applyEvidence(spread.each[0]!, results, spread.at(dilutionObjectives));
  const acute = spread.at(acuteObjectives).map(acuteToxicity);
  const ofSkin = judge(skin, skinObjectives);
  const corrosive = isCorrosive(evidenced(ofSkin));
  const calculated = [
    ...alone(flammableLiquids),
    ...physicalClasses(spread, choose),
    ...choose(acute.map(({ results }) => results)),
    ...ofSkin,
    ...judge(each => eye(each, corrosive), eyeObjectives),
    ...alone(sensitization),
    ...alone(mutagenicity),
    ...alone(carcinogenicity),
    ...alone(reproductiveToxicity),
    ...alone(targetOrgans),
    ...judge(transientEffects, transientObjectives),
    ...judge(aspiration, aspirationObjectives),
    ...judge(aquatic, aquaticObjectives),
    ...alone(environmental),
  ];
  return {
    results: evidenced(undecidedByMissingData(spread.each, calculated)),
    sums: acute.map(({ sums }) => sums),
  };
}

/** Physical classes look at one ingredient at a time, but for those that add up. */
function physicalClasses(spread: Spread, choose: Choose): readonly ClassResult[] {
  const results = choose(spread.each.map(physical));
  if (!spread.apart) return results;
  const sums = physicalObjectives(spread.each[0]!);
  return results.map((result, i) => {
    const objectives = sums[result.class];
    if (!objectives?.length) return result;
    return choose(spread.at(() => objectives).map(context => [physical(context)[i]!]))[0]!;
  });
}

const skinAndEye = ['Skin Corr.', 'Skin Irrit.', 'Eye Dam.', 'Eye Irrit.'];

/** The classes that specific concentration limits of the given hazard classes can change, evidence applied. */
export function classesWithLimits(
  spread: Spread,
  choose: Choose,
  limited: ReadonlySet<string>,
): readonly ClassResult[] {
  const judge = (rule: Rule, objectivesOf: ObjectivesOf): readonly ClassResult[] =>
    choose(spread.at(objectivesOf).map(rule));
  const alone = (rule: Rule): readonly ClassResult[] => choose(spread.each.map(rule));
  const evidenced = (found: readonly ClassResult[]) =>
    applyEvidence(spread.each[0]!, found, spread.at(dilutionObjectives));
  const results: ClassResult[] = [];
  if (skinAndEye.some(hazardClass => limited.has(hazardClass))) {
    const ofSkin = judge(skin, skinObjectives);
    const corrosive = isCorrosive(evidenced(ofSkin));
    results.push(...ofSkin, ...judge(each => eye(each, corrosive), eyeObjectives));
  }
  if (limited.has('Resp. Sens.') || limited.has('Skin Sens.')) results.push(...alone(sensitization));
  if (limited.has('Muta.')) results.push(...alone(mutagenicity));
  if (limited.has('Carc.')) results.push(...alone(carcinogenicity));
  if (limited.has('Repr.') || limited.has('Lact.')) results.push(...alone(reproductiveToxicity));
  if (limited.has('STOT SE') || limited.has('STOT RE'))
    results.push(...alone(targetOrgans), ...judge(transientEffects, transientObjectives));
  if (spread.each[0]!.basis.physicalClasses.some(entry => limited.has(entry.class)))
    results.push(...physicalClasses(spread, choose));
  return evidenced(results);
}

const isCorrosive = (results: readonly ClassResult[]): boolean =>
  results.some(result => result.outcome === 'classified' && result.hazard.hazardClass === 'Skin Corr.');

/** A class that nothing gives is undecided while an ingredient without any data is present at its cut-off. */
function undecidedByMissingData(
  contexts: readonly Context[],
  results: readonly ClassResult[],
): readonly ClassResult[] {
  const isBlind = ({ data }: Ingredient): boolean => data.noData || data.unknown.has('aquatic');
  if (!contexts[0]!.mixture.ingredients.some(isBlind)) return results;
  return results.map(result => {
    const { floor } = result;
    if (result.outcome !== 'not-classified' || floor === undefined) return result;
    const aquaticClass = result.class.startsWith('Aquatic');
    const lacking = new Set<number>();
    for (const { mixture, scale } of contexts)
      for (const { index, percent, data } of mixture.ingredients.filter(isBlind))
        if ((data.noData || aquaticClass) && scale.reaches(percent, floor)) lacking.add(index);
    return lacking.size === 0 ? result : withoutData(result, [...lacking]);
  });
}

const withoutData = (
  { class: name, route, because, readings, warnings, floor }: ClassResult,
  lacking: readonly number[],
): ClassResult => ({
  class: name,
  route,
  outcome: 'insufficient-data',
  because: { ...because, lacking },
  readings,
  warnings,
  floor,
});
