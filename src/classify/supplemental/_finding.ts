import { type Part, sumOf } from '../../quantity/sum.ts';
import type { ClassResult, Context } from '../context.ts';
import type { Because, SharesRule } from '../facts/because.ts';
import type { OpenQuestion } from '../facts/open-question.ts';
import type { Ingredient } from '../ingredient.ts';
import type { ReadingId } from '../readings.ts';
import { termOf } from '../sums.ts';
import { type Member, ofAnnex } from './_rules.ts';

/** What is known of how the product is sold. */
export interface SoldAs {
  /** Whether it is sold to the general public; absent where the record does not say. */
  readonly generalPublic?: boolean;
}

/** What a rule of CLP Annex II works from. */
export interface SupplementalInput extends Context {
  /** The classes of the mixture as they stand in the end. */
  readonly results: readonly ClassResult[];
  readonly soldAs: SoldAs;
}

/** A statement whose figures are met; `open` names what must be true besides and is not known. */
export interface Finding {
  readonly code: string;
  readonly fields: Readonly<Record<string, readonly string[]>>;
  readonly because: Because;
  readonly readings: readonly ReadingId[];
  readonly open?: OpenQuestion;
}

export const isClassified = ({ results }: SupplementalInput): boolean =>
  results.some(({ outcome }) => outcome === 'classified');

/** Whether the mixture has one of the classes; a route narrows it. */
export const hasClass = (
  { results }: SupplementalInput,
  classes: readonly string[],
  route?: string,
): boolean =>
  results.some(
    result =>
      result.outcome === 'classified' &&
      classes.includes(result.hazard.hazardClass) &&
      (route === undefined || result.hazard.route === route),
  );

/** An ingredient's amount in a sum, in percent of the mixture. */
export interface Share {
  readonly ingredient: Ingredient;
  readonly weight: number;
}

const partOf = ({ ingredient, weight }: Share): Part => ({ amount: ingredient.percent, weight });

/** Whether the shares are above a limit, or at it where it is inclusive; exact. */
export function over(
  { scale }: Pick<Context, 'scale'>,
  shares: readonly Share[],
  limit: number,
  inclusive: boolean,
): boolean {
  if (shares.length === 0) return false;
  const sign = scale.compareSum(shares.map(partOf), limit);
  return inclusive ? sign >= 0 : sign > 0;
}

/** What the shares are held against. */
export interface SharesOf {
  readonly rule: SharesRule;
  /** Percent. */
  readonly limit: number;
  readonly inclusive: boolean;
  readonly paragraph: string;
  readonly code: string;
}

/** Shares that pass their limit, as facts. */
export const becauseOfShares = (
  shares: readonly Share[],
  { rule, limit, inclusive, paragraph, code }: SharesOf,
): Because => ({
  kind: 'sum',
  rule,
  cites: [ofAnnex(paragraph)],
  terms: shares.map(({ ingredient, weight }) => termOf(ingredient, weight)),
  total: sumOf(shares.map(partOf)),
  limit,
  operator: inclusive ? '>=' : '>',
  reached: true,
  code,
});

/** Ingredients that a list names, each with its weight. */
export const sharesOf = <M extends Member>(
  { mixture }: SupplementalInput,
  members: readonly M[],
  weightOf: (member: M) => number = () => 1,
): Share[] =>
  mixture.ingredients.flatMap(ingredient => {
    const member = members.find(({ cas }) => cas === ingredient.cas);
    return member && ingredient.percent.value > 0 ? [{ ingredient, weight: weightOf(member) }] : [];
  });
