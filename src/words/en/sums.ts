import supplemental from '../../../hazard-data/eu-clp/supplemental.json' with { type: 'json' };
import { sumWords } from '../sum-words.ts';
import { judgedAt, withSource } from './measured.ts';

/** Which gas a statement warns of: `releases toxic gas with acids`. */
export const gasOf = (code: string | undefined): string =>
  supplemental.gasRelease.statements.find(statement => statement.code === code)?.what ?? '';

/** Sums of ingredients. */
export const { sum, ratios } = sumWords({
  rules: {
    'corrosive-and-irritant': 'sum of corrosive and irritant ingredients',
    'irritant-mild': 'sum of irritant ingredients to Category 3',
    'corrosive-and-damaging': 'sum of skin-corrosive and eye-damaging ingredients',
    'damaging-and-irritating': 'sum of eye-damaging and eye-irritating ingredients',
    'respiratory-irritation': 'sum of ingredients with respiratory irritation',
    'narcotic-effects': 'sum of ingredients with narcotic effects',
    aspiration: 'sum of aspiration toxicants',
    'pyrophoric-gases': 'pyrophoric gases of a mixture without data of its own',
    lead: 'lead, as metal',
    cyanoacrylates: 'cyanoacrylates',
    'chromium-in-cement': 'soluble chromium (VI) by weight of cement',
    cement: 'cement',
    isocyanates: supplemental.isocyanates.what,
    'epoxy-listed': supplemental.epoxy.what,
    epoxy: 'epoxy constituents',
    'active-chlorine': 'active chlorine',
    cadmium: 'cadmium',
    'highly-flammable-beside-halogenated': 'highly flammable beside halogenated hydrocarbons',
    'flammable-beside-halogenated': 'flammable beside halogenated hydrocarbons',
    'titanium-dioxide': 'titanium dioxide',
    'toxic-by-eye-contact': 'contains a substance toxic by eye contact',
    'dries-skin': 'substances that dry the skin',
    'corrosive-to-respiratory-tract': 'contains a substance corrosive to the respiratory tract',
    'has-statement': 'contains a substance with this statement',
  },
  corrosive: category => `sum of corrosive ingredients${category === null ? '' : ` to ${category}`}`,
  aquatic: category => `summation to Category ${category}`,
  gasOf,
  byOwnLimit: 'each by its own limit',
  byVolume: 'by volume',
  viscosity: 'kinematic viscosity at 40',
  viscosityMissing: (property, limit) => `${property} is not given (limit ${limit})`,
  measured: (property, value, style, show) => withSource(judgedAt(property, value, style, show), value),
});
