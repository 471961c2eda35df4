import { reaches } from '../quantity/sum.ts';
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
  const corrosive = applyEvidence(context, ofSkin).some(
    result => result.outcome === 'classified' && result.hazard.hazardClass === 'Skin Corr.',
  );
  const calculated = [
    ...flammableLiquids(context),
    ...physical(context),
    ...acute.results,
    ...ofSkin,
    ...eye(context, corrosive),
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

/** A class that nothing gives is undecided while an ingredient without any data is present at its cut-off. */
function undecidedByMissingData({ mixture }: Context, results: readonly ClassResult[]): readonly ClassResult[] {
  const blind = mixture.ingredients.filter(({ data }) => data.noData || data.unknown.has('aquatic'));
  if (blind.length === 0) return results;
  return results.map(result => {
    if (result.outcome !== 'not-classified' || result.floor === undefined) return result;
    const aquaticClass = result.class.startsWith('Aquatic');
    let names = '';
    for (const { name, percent, data } of blind)
      if ((data.noData || aquaticClass) && reaches(percent, result.floor)) names += names === '' ? name : `, ${name}`;
    if (names === '') return result;
    const { because } = result;
    const working = `${because.working}; no data on ${names}`;
    return { ...result, outcome: 'insufficient-data', because: { ...because, working } };
  });
}
