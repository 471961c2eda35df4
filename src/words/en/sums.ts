import supplemental from '../../../hazard-data/eu-clp/supplemental.json' with { type: 'json' };
import type { RatiosBecause, SumBecause, SumRule, ViscosityFact } from '../../classify/facts/because.ts';
import type { Reasoned, Telling } from '../words.ts';
import { judgedAt, withSource } from './measured.ts';

const rules: Readonly<Record<Exclude<SumRule, 'corrosive' | 'aquatic' | 'releases-gas'>, string>> = {
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
};

/** Which gas a statement warns of: `releases toxic gas with acids`. */
export const gasOf = (code: string | undefined): string =>
  supplemental.gasRelease.statements.find(statement => statement.code === code)?.what ?? '';

function ruleOf({ rule, category, code }: { rule: SumRule; category?: string; code?: string }): string {
  if (rule === 'corrosive') {
    const to = category === undefined || category === '1' ? '' : ` to ${category}`;
    return `sum of corrosive ingredients${to}`;
  }
  if (rule === 'aquatic') return `summation to Category ${category}`;
  return rule === 'releases-gas' ? gasOf(code) : rules[rule];
}

/** A sum of ratios, each by its own limit, against 1. */
export function ratios(because: RatiosBecause, tell: Telling): Reasoned {
  const { terms, total, reached } = because;
  const quotients = terms.map(
    ({ constituent, amount, over }) =>
      `${tell.style.show(amount.value)}/${tell.style.show(over.value)} ${tell.names(constituent)}`,
  );
  return {
    rule: `${ruleOf(because)}, each by its own limit`,
    working: `${quotients.join(' + ')} = ${tell.style.beside(total, 1)} ${tell.style.signs[reached ? '>=' : '<']} 1`,
  };
}

const unmet = { '>=': '<', '>': '<=' } as const;

/** A weighted sum of percents against its limit. */
export function sum(because: SumBecause, tell: Telling): Reasoned {
  const { rule, terms, total, limit, operator, reached, viscosity } = because;
  const alone = terms.length === 1;
  const shares = terms.map(({ constituent, amount, weight }) => {
    const times = weight === 1 ? '' : `${tell.style.show(weight)} x `;
    return `${times}${alone ? tell.style.beside(amount.value, limit) : tell.style.show(amount.value)} % ${tell.names(constituent)}`;
  });
  const byVolume = rule === 'pyrophoric-gases';
  // One ingredient that counts once is its own total.
  const isTotal = alone && terms[0]!.weight === 1 && !byVolume;
  const equals = isTotal ? '' : ` = ${tell.style.beside(total, limit)} %${byVolume ? ' by volume' : ''}`;
  const compared = `${tell.style.signs[reached ? operator : unmet[operator]]} ${tell.style.show(limit)} %`;
  return {
    rule: ruleOf(because),
    working: `${shares.join(' + ')}${equals} ${compared}${viscosity ? `; ${viscosityText(viscosity, tell)}` : ''}`,
  };
}

function viscosityText({ measured, limit, reached }: ViscosityFact, { style }: Telling): string {
  const property = `kinematic viscosity at 40 ${style.celsius}`;
  const unit = style.squareMillimetresPerSecond;
  if (!measured) return `${property} is not given (limit ${style.show(limit)} ${unit})`;
  const value = withSource(
    judgedAt(property, measured, style, each => `${style.show(each)} ${unit}`),
    measured,
  );
  return `${value} ${style.signs[reached ? '<=' : '>']} ${style.show(limit)} ${unit}`;
}
