import type { RatiosBecause, SumBecause, SumRule, ViscosityFact } from '../classify/facts/because.ts';
import type { Style } from '../quantity/print.ts';
import type { Reasoned, Telling } from './words.ts';

/** What a language says of sums of ingredients; the arithmetic around it is the same in all. */
export interface SumPhrases {
  readonly rules: Readonly<Record<Exclude<SumRule, 'corrosive' | 'aquatic' | 'releases-gas'>, string>>;
  /** @param category the category that is summed to; null where there is but one */
  corrosive(category: string | null): string;
  aquatic(category: string | undefined): string;
  /** Which gas a statement warns of; empty where it warns of none. */
  gasOf(code: string | undefined): string;
  readonly byOwnLimit: string;
  readonly byVolume: string;
  readonly viscosity: string;
  viscosityMissing(property: string, limit: string): string;
  /** A measured value as it is judged, with method and source. */
  measured(
    property: string,
    value: NonNullable<ViscosityFact['measured']>,
    style: Style,
    show: (value: number) => string,
  ): string;
}

const unmet = { '>=': '<', '>': '<=' } as const;

/** Sums against a limit, in the phrases of a language. */
export function sumWords(phrases: SumPhrases): {
  readonly sum: (because: SumBecause, tell: Telling) => Reasoned;
  readonly ratios: (because: RatiosBecause, tell: Telling) => Reasoned;
} {
  return { sum, ratios };

  function ruleOf({ rule, category, code }: { rule: SumRule; category?: string; code?: string }): string {
    if (rule === 'corrosive')
      return phrases.corrosive(category === undefined || category === '1' ? null : category);
    if (rule === 'aquatic') return phrases.aquatic(category);
    return rule === 'releases-gas' ? phrases.gasOf(code) : phrases.rules[rule];
  }

  /** A sum of ratios, each by its own limit, against 1. */
  function ratios(because: RatiosBecause, tell: Telling): Reasoned {
    const { terms, total, reached } = because;
    const quotients = terms.map(
      ({ constituent, amount, over }) =>
        `${tell.style.show(amount.value)}/${tell.style.show(over.value)} ${tell.names(constituent)}`,
    );
    return {
      rule: `${ruleOf(because)}, ${phrases.byOwnLimit}`,
      working: `${quotients.join(' + ')} = ${tell.style.beside(total, 1)} ${tell.style.signs[reached ? '>=' : '<']} 1`,
    };
  }

  /** A weighted sum of percents against its limit. */
  function sum(because: SumBecause, tell: Telling): Reasoned {
    const { rule, terms, total, limit, operator, reached, viscosity } = because;
    const alone = terms.length === 1;
    const shares = terms.map(({ constituent, amount, weight }) => {
      const times = weight === 1 ? '' : `${tell.style.show(weight)} x `;
      return `${times}${alone ? tell.style.beside(amount.value, limit) : tell.style.show(amount.value)} % ${tell.names(constituent)}`;
    });
    const byVolume = rule === 'pyrophoric-gases';
    // One ingredient that counts once is its own total.
    const isTotal = alone && terms[0]!.weight === 1 && !byVolume;
    const equals = isTotal
      ? ''
      : ` = ${tell.style.beside(total, limit)} %${byVolume ? ` ${phrases.byVolume}` : ''}`;
    const compared = `${tell.style.signs[reached ? operator : unmet[operator]]} ${tell.style.show(limit)} %`;
    return {
      rule: ruleOf(because),
      working: `${shares.join(' + ')}${equals} ${compared}${viscosity ? `; ${viscosityText(viscosity, tell)}` : ''}`,
    };
  }

  function viscosityText({ measured, limit, reached }: ViscosityFact, { style }: Telling): string {
    const property = `${phrases.viscosity} ${style.celsius}`;
    const unit = style.squareMillimetresPerSecond;
    if (!measured) return phrases.viscosityMissing(property, `${style.show(limit)} ${unit}`);
    const value = phrases.measured(property, measured, style, each => `${style.show(each)} ${unit}`);
    return `${value} ${style.signs[reached ? '<=' : '>']} ${style.show(limit)} ${unit}`;
  }
}
