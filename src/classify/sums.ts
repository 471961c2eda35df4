import { Exact } from '../quantity/exact.ts';
import { meets, type Part, show, showBeside, sumOf, tidy } from '../quantity/sum.ts';
import type { Because } from './classification.ts';
import type { Ingredient } from './ingredient.ts';
import { reason } from './reasons.ts';

/** One ingredient's share in an additive rule. */
export interface SumTerm {
  readonly ingredient: Ingredient;
  /** Weight in the plain sum of the table. */
  readonly weight: number;
  /** The concentration that alone would reach the limit: a specific limit, or the table's figure over the weight. */
  readonly limit: Exact;
  /** A specific limit replaces the table's figure. */
  readonly specific: boolean;
}

const decimals = new Map<number, Exact>();

/** A figure of the law as an exact value, made once. */
export function figure(value: number): Exact {
  let made = decimals.get(value);
  if (!made) {
    made = Exact.decimal(value);
    decimals.set(value, made);
  }
  return made;
}

/** A term at the table's own figure and weight. */
export const genericTerm = (ingredient: Ingredient, limit: number, weight = 1): SumTerm => ({
  ingredient,
  weight,
  limit: figure(limit / weight),
  specific: false,
});

/** A term at a specific limit. */
export const specificTerm = (ingredient: Ingredient, limit: Exact, weight = 1): SumTerm => ({
  ingredient,
  weight,
  limit,
  specific: true,
});

const ratioPart = ({ ingredient, limit }: SumTerm): Part => ({
  amount: ingredient.percent,
  weight: 1,
  over: limit,
});
const percentPart = ({ ingredient, weight }: SumTerm): Part => ({ amount: ingredient.percent, weight });

/** Whether a sum is reached: as plain percents where the table's figures hold for all, else as ratios against 1. */
export function reachesLimit(terms: readonly SumTerm[], limit: number): boolean {
  if (terms.length === 0) return false;
  return terms.some(({ specific }) => specific)
    ? meets(terms.map(ratioPart), 1)
    : meets(terms.map(percentPart), limit);
}

/** The sum as worked on paper. */
export const becauseOfSum = (
  terms: readonly SumTerm[],
  limit: number,
  rule: string,
  cite: string,
  limitsCite: string,
): Because => reason(() => workedSum(terms, limit, rule, cite, limitsCite));

function workedSum(
  terms: readonly SumTerm[],
  limit: number,
  rule: string,
  cite: string,
  limitsCite: string,
): Because {
  const rows = terms.map(({ ingredient, weight }) => ({
    name: ingredient.name,
    percent: ingredient.percent.value,
    weight,
  }));
  if (terms.some(({ specific }) => specific)) {
    const total = tidy(sumOf(terms.map(ratioPart)));
    const working = terms
      .map(
        ({ ingredient, limit: own }) =>
          `${show(ingredient.percent.value)}/${show(own.value)} ${ingredient.name}`,
      )
      .join(' + ');
    return {
      rule: `${rule}, each by its own limit`,
      cite: `${cite}; ${limitsCite}`,
      working: `${working} = ${showBeside(total, 1)} ${reachesLimit(terms, limit) ? '>=' : '<'} 1`,
      total,
      limit: 1,
      unit: 'ratio',
      terms: rows,
    };
  }
  const total = tidy(sumOf(terms.map(percentPart)));
  const sign = reachesLimit(terms, limit) ? '>=' : '<';
  const working = rows
    .map(
      ({ name, percent, weight }) =>
        `${weight === 1 ? '' : `${show(weight)} x `}${rows.length > 1 ? show(percent) : showBeside(percent, limit)} % ${name}`,
    )
    .join(' + ');
  // One ingredient that counts once is its own total.
  const equals = rows.length > 1 || rows[0]!.weight !== 1 ? ` = ${showBeside(total, limit)} %` : '';
  return {
    rule,
    cite,
    working: `${working}${equals} ${sign} ${show(limit)} %`,
    total,
    limit,
    unit: '%',
    terms: rows,
  };
}

/** One ingredient against one limit, as worked on paper. */
export const becauseOfOne = (
  ingredient: Ingredient,
  limit: number,
  reached: boolean,
  rule: string,
  cite: string,
): Because =>
  reason(() => ({
    rule,
    cite,
    working: `${showBeside(ingredient.percent.value, limit)} % ${ingredient.name} ${reached ? '>=' : '<'} ${show(limit)} %`,
    total: ingredient.percent.value,
    limit,
    unit: '%',
    terms: [{ name: ingredient.name, percent: ingredient.percent.value, weight: 1 }],
  }));

/** No ingredient has the hazard at all, or none at the cut-off. */
export const becauseOfNone = (rule: string, cite: string, working: string): Because => ({
  rule,
  cite,
  working,
  terms: [],
});
