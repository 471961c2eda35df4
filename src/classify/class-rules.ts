import { listedClass } from '../notation/listed-class.ts';
import type { ClassRule } from './class-rule.ts';
import { acuteToxicity } from './classes/acute-toxicity.ts';
import { aerosols } from './classes/aerosols.ts';
import { aquaticAcute, aquaticChronic } from './classes/aquatic.ts';
import { aspiration } from './classes/aspiration.ts';
import { carcinogenicity } from './classes/carcinogenicity.ts';
import { corrosiveToMetals } from './classes/corrosive-to-metals.ts';
import { endocrineForEnvironment, endocrineForHealth, ozone, persistent } from './classes/environmental.ts';
import { eye } from './classes/eye.ts';
import { flammableLiquids } from './classes/flammable-liquids.ts';
import { mutagenicity } from './classes/mutagenicity.ts';
import { organicPeroxides } from './classes/organic-peroxides.ts';
import { physicalClass } from './classes/physical.ts';
import { pyrophoricGases } from './classes/pyrophoric-gases.ts';
import { lactation, reproductiveToxicity } from './classes/reproductive-toxicity.ts';
import { respiratorySensitization, skinSensitization } from './classes/sensitization.ts';
import { skin } from './classes/skin.ts';
import { targetOrgansOnce, targetOrgansRepeatedly } from './classes/target-organs.ts';
import { transientEffects } from './classes/transient-effects.ts';

/** Every hazard class. The one place where a class is registered; results stand in this order, that of the law. */
export const classRules: readonly ClassRule[] = [
  physicalClass('Expl.'),
  physicalClass('Flam. Gas'),
  pyrophoricGases,
  physicalClass('Chem. Unst. Gas'),
  aerosols,
  physicalClass('Chem. under Press.'),
  physicalClass('Ox. Gas'),
  physicalClass('Press. Gas'),
  flammableLiquids,
  physicalClass('Flam. Sol.'),
  physicalClass('Self-react.'),
  physicalClass('Pyr. Liq.'),
  physicalClass('Pyr. Sol.'),
  physicalClass('Self-heat.'),
  physicalClass('Water-react.'),
  physicalClass('Ox. Liq.'),
  physicalClass('Ox. Sol.'),
  organicPeroxides,
  corrosiveToMetals,
  physicalClass('Desens. Expl.'),
  physicalClass('Comb. Dust'),
  physicalClass('Simple Asphyx.'),
  acuteToxicity,
  skin,
  eye,
  respiratorySensitization,
  skinSensitization,
  mutagenicity,
  carcinogenicity,
  reproductiveToxicity,
  lactation,
  targetOrgansOnce,
  transientEffects,
  targetOrgansRepeatedly,
  aspiration,
  endocrineForHealth,
  aquaticAcute,
  aquaticChronic,
  endocrineForEnvironment,
  ...persistent,
  ozone,
];

/** The rule that judges a hazard of the notation. */
export const ruleFor = (hazardClass: string, category: string): ClassRule | undefined =>
  classRules.find(
    ({ listed, categories }) =>
      listed === listedClass(hazardClass) && (categories === undefined || categories.includes(category)),
  );

/** The rule of a class as listed; of target organs that of Categories 1 and 2. */
export const ruleOf = (listed: string): ClassRule | undefined =>
  classRules.find(rule => rule.listed === listed);
