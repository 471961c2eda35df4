import type { RatiosBecause, SumBecause, SumRule, ViscosityFact } from '../../classify/facts/because.ts';
import type { Reasoned, Telling } from '../words.ts';
import { judgedAt, withSource } from './measured.ts';

const rules: Readonly<Record<Exclude<SumRule, 'corrosive' | 'aquatic' | 'releases-gas'>, string>> = {
  'corrosive-and-irritant': 'suma de componentes corrosivos e irritantes',
  'irritant-mild': 'suma de componentes irritantes para la categoría 3',
  'corrosive-and-damaging': 'suma de componentes corrosivos para la piel y que causan lesiones oculares',
  'damaging-and-irritating': 'suma de componentes que causan lesiones e irritación oculares',
  'respiratory-irritation': 'suma de componentes que irritan las vías respiratorias',
  'narcotic-effects': 'suma de componentes con efectos narcóticos',
  aspiration: 'suma de componentes tóxicos por aspiración',
  'pyrophoric-gases': 'gases pirofóricos de una mezcla sin datos propios',
  lead: 'plomo, como metal',
  cyanoacrylates: 'cianoacrilatos',
  'chromium-in-cement': 'cromo (VI) soluble por peso de cemento',
  cement: 'cemento',
  isocyanates: 'isocianatos',
  'epoxy-listed': 'componentes epoxídicos',
  epoxy: 'componentes epoxídicos',
  'active-chlorine': 'cloro activo',
  cadmium: 'cadmio',
  'highly-flammable-beside-halogenated': 'muy inflamable junto a hidrocarburos halogenados',
  'flammable-beside-halogenated': 'inflamable junto a hidrocarburos halogenados',
  'titanium-dioxide': 'dióxido de titanio',
  'toxic-by-eye-contact': 'contiene una sustancia tóxica en contacto con los ojos',
  'dries-skin': 'sustancias que secan la piel',
  'corrosive-to-respiratory-tract': 'contiene una sustancia corrosiva para las vías respiratorias',
  'has-statement': 'contiene una sustancia con esta indicación',
};

const gases: Readonly<Record<string, string>> = {
  EUH029: 'libera gases tóxicos con agua',
  EUH031: 'libera gases tóxicos con ácidos',
  EUH032: 'libera gases muy tóxicos con ácidos',
};

function ruleOf({ rule, category, code }: { rule: SumRule; category?: string; code?: string }): string {
  if (rule === 'corrosive') {
    const to = category === undefined || category === '1' ? '' : ` para la ${category}`;
    return `suma de componentes corrosivos${to}`;
  }
  if (rule === 'aquatic') return `suma para la categoría ${category}`;
  return rule === 'releases-gas' ? (gases[code ?? ''] ?? '') : rules[rule];
}

/** A sum of ratios, each by its own limit, against 1. */
export function ratios(because: RatiosBecause, tell: Telling): Reasoned {
  const { terms, total, reached } = because;
  const quotients = terms.map(
    ({ constituent, amount, over }) =>
      `${tell.style.show(amount.value)}/${tell.style.show(over.value)} ${tell.names(constituent)}`,
  );
  return {
    rule: `${ruleOf(because)}, cada uno por su propio límite`,
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
  const equals = isTotal ? '' : ` = ${tell.style.beside(total, limit)} %${byVolume ? ' en volumen' : ''}`;
  const compared = `${tell.style.signs[reached ? operator : unmet[operator]]} ${tell.style.show(limit)} %`;
  return {
    rule: ruleOf(because),
    working: `${shares.join(' + ')}${equals} ${compared}${viscosity ? `; ${viscosityText(viscosity, tell)}` : ''}`,
  };
}

function viscosityText({ measured, limit, reached }: ViscosityFact, { style }: Telling): string {
  const property = `viscosidad cinemática a 40 ${style.celsius}`;
  const unit = style.squareMillimetresPerSecond;
  if (!measured) return `${property} no indicada (límite ${style.show(limit)} ${unit})`;
  const value = withSource(
    judgedAt(property, measured, style, each => `${style.show(each)} ${unit}`),
    measured,
  );
  return `${value} ${style.signs[reached ? '<=' : '>']} ${style.show(limit)} ${unit}`;
}
