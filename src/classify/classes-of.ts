import type { AcuteKey } from '../reference/thresholds.ts';
import { type AcuteSum, acuteToxicity } from './classes/acute-toxicity.ts';
import { aquatic } from './classes/aquatic.ts';
import { aspiration } from './classes/aspiration.ts';
import { carcinogenicity } from './classes/carcinogenicity.ts';
import { environmental } from './classes/environmental.ts';
import { eye } from './classes/eye.ts';
import { flammableLiquids } from './classes/flammable-liquids.ts';
import { mutagenicity } from './classes/mutagenicity.ts';
import { physical } from './classes/physical.ts';
import { reproductiveToxicity } from './classes/reproductive-toxicity.ts';
import { sensitization } from './classes/sensitization.ts';
import { skin } from './classes/skin.ts';
import { targetOrgans, transientEffects } from './classes/specific-target-organ.ts';
import type { ClassResult, Context } from './context.ts';
import { applyEvidence } from './evidence.ts';

/** The classes of a mixture at fixed concentrations, with the sums of acute toxicity. */
export interface Corner {
  readonly results: readonly ClassResult[];
  readonly sums: ReadonlyMap<AcuteKey, AcuteSum>;
}

/** All classes of a mixture at fixed concentrations, in the order of the law, evidence applied. */
export function classesOf(context: Context): Corner {
  const acute = acuteToxicity(context);
  const ofSkin = skin(context);
  const calculated = [
    ...flammableLiquids(context),
    ...physical(context),
    ...acute.results,
    ...ofSkin,
    ...eye(context, isCorrosive(applyEvidence(context, ofSkin))),
    ...sensitization(context),
    ...mutagenicity(context),
    ...carcinogenicity(context),
    ...reproductiveToxicity(context),
    ...targetOrgans(context),
    ...transientEffects(context),
    ...aspiration(context),
    ...aquatic(context),
    ...environmental(context),
  ];
  return { results: applyEvidence(context, undecidedByMissingData(context, calculated)), sums: acute.sums };
}

const skinAndEye = ['Skin Corr.', 'Skin Irrit.', 'Eye Dam.', 'Eye Irrit.'];

/**
 * The classes that specific concentration limits of the given hazard classes can change, at fixed concentrations,
 * evidence applied.
 */
export function classesWithLimits(context: Context, limited: ReadonlySet<string>): readonly ClassResult[] {
  const results: ClassResult[] = [];
  if (skinAndEye.some(hazardClass => limited.has(hazardClass))) {
    const ofSkin = skin(context);
    results.push(...ofSkin, ...eye(context, isCorrosive(applyEvidence(context, ofSkin))));
  }
  if (limited.has('Resp. Sens.') || limited.has('Skin Sens.')) results.push(...sensitization(context));
  if (limited.has('Muta.')) results.push(...mutagenicity(context));
  if (limited.has('Carc.')) results.push(...carcinogenicity(context));
  if (limited.has('Repr.') || limited.has('Lact.')) results.push(...reproductiveToxicity(context));
  if (limited.has('STOT SE') || limited.has('STOT RE'))
    results.push(...targetOrgans(context), ...transientEffects(context));
  if (context.basis.physicalClasses.some(entry => limited.has(entry.class)))
    results.push(...physical(context));
  return applyEvidence(context, results);
}

const isCorrosive = (results: readonly ClassResult[]): boolean =>
  results.some(result => result.outcome === 'classified' && result.hazard.hazardClass === 'Skin Corr.');

/** A class that nothing gives is undecided while an ingredient without any data is present at its cut-off. */
function undecidedByMissingData(
  { mixture, scale }: Context,
  results: readonly ClassResult[],
): readonly ClassResult[] {
  const blind = mixture.ingredients.filter(({ data }) => data.noData || data.unknown.has('aquatic'));
  if (blind.length === 0) return results;
  return results.map(result => {
    const { floor } = result;
    if (result.outcome !== 'not-classified' || floor === undefined) return result;
    const aquaticClass = result.class.startsWith('Aquatic');
    const lacking: number[] = [];
    for (const { index, percent, data } of blind)
      if ((data.noData || aquaticClass) && scale.reaches(percent, floor)) lacking.push(index);
    return lacking.length === 0 ? result : withoutData(result, lacking);
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
