import { Exact } from '../quantity/exact.ts';
import type { Scale } from '../quantity/scale.ts';
import { type Part, sumOf, tidy } from '../quantity/sum.ts';
import type { Because, SumRule } from './facts/because.ts';
import type { Provision } from './facts/provision.ts';
import type { Term } from './facts/reason-base.ts';
import type { Ingredient } from './ingredient.ts';

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

const byOwnLimits = (terms: readonly SumTerm[]): boolean => terms.some(({ specific }) => specific);

/** Whether a sum is reached: as plain percents where the table's figures hold for all, else as ratios against 1. */
export function reachesLimit(scale: Scale, terms: readonly SumTerm[], limit: number): boolean {
  if (terms.length === 0) return false;
  return byOwnLimits(terms)
    ? scale.meets(terms.map(ratioPart), 1)
    : scale.meets(terms.map(percentPart), limit);
}

/** A constituent's share as a fact. */
export const termOf = ({ index, percent }: Ingredient, weight = 1): Term => ({
  constituent: index,
  amount: percent,
  weight,
});

/** What a sum is about, besides its terms. */
export interface SumOf {
  readonly rule: SumRule;
  /** Percent. */
  readonly limit: number;
  readonly reached: boolean;
  readonly cite: Provision;
  /** Where specific limits enter a sum. */
  readonly limitsCite?: Provision;
  readonly category?: string;
}

/** The sum as facts. */
export function becauseOfSum(
  terms: readonly SumTerm[],
  { rule, limit, reached, cite, limitsCite, category }: SumOf,
): Because {
  if (byOwnLimits(terms))
    return {
      kind: 'ratios',
      rule,
      cites: limitsCite ? [cite, limitsCite] : [cite],
      terms: terms.map(({ ingredient, weight, limit: own }) => ({
        constituent: ingredient.index,
        amount: ingredient.percent,
        weight,
        over: own,
      })),
      total: tidy(sumOf(terms.map(ratioPart))),
      reached,
      ...(category !== undefined && { category }),
    };
  return {
    kind: 'sum',
    rule,
    cites: [cite],
    terms: terms.map(({ ingredient, weight }) => termOf(ingredient, weight)),
    total: tidy(sumOf(terms.map(percentPart))),
    limit,
    operator: '>=',
    reached,
    ...(category !== undefined && { category }),
  };
}

/** One ingredient judged by itself against one limit. */
export const becauseOfOne = (
  ingredient: Ingredient,
  limit: Exact,
  specific: boolean,
  rule: 'corrosive-alone' | 'irritant-alone' | 'damaging-alone' | 'strong-without-ph',
  cites: readonly Provision[],
): Because => ({
  kind: 'ingredients',
  rule,
  cites,
  comparisons: [
    {
      constituent: ingredient.index,
      amount: ingredient.percent,
      limit,
      reached: true,
      own: null,
      result: null,
      specific,
    },
  ],
});
