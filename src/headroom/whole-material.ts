import Fraction from 'fraction.js';
import type { Composition, Constituent, Formula } from '../formula/constituent.ts';
import { Exact } from '../quantity/exact.ts';
import { fail, type Outcome, succeed } from '../report/diagnostic.ts';
import type { Affine } from './affine.ts';
import { STAND_IN } from './raw-material.ts';
import type { Shop } from './shop-amount.ts';
import { distinctPaths, type Others, sampleAt, type Varied, vary } from './variation.ts';

/** A raw material and the rest of the product, each expanded by itself. */
export interface WholeMaterial {
  readonly name: string;
  /** The product with the raw material standing in it as one constituent. */
  readonly rest: Formula;
  /** The raw material as delivered. */
  readonly alone: Formula;
  readonly shop: Shop;
}

const none = new Fraction(0);
const nothing: Affine = { start: Exact.fraction(none), slope: Exact.fraction(none) };

/** What makes two entries one constituent: the CAS number, or else the name. */
export const keyOf = ({ name, cas }: Pick<Constituent, 'name' | 'cas'>): string =>
  cas ?? name.toLowerCase().replace(/\s+/g, ' ');

/**
 * Lets the amount of a whole raw material vary: all its constituents in proportion, beside what other lines bring of
 * them. Water that gives way is that of the other lines; what the raw material holds of it moves with it.
 * @param formula of the product, whose constituents are judged.
 * @param weights of the sums for which a composition within the ranges is looked at, by constituent of the formula.
 */
export function varyMaterial(
  formula: Formula,
  { name, rest, alone }: Pick<WholeMaterial, 'name' | 'rest' | 'alone'>,
  weights: readonly (readonly number[])[],
  others: Others,
): Outcome<Varied> {
  const index = rest.constituents.findIndex(constituent => constituent.name === STAND_IN);
  if (index < 0)
    return fail({
      code: 'nothing-of-it',
      severity: 'error',
      message: `${name} comes to 0 %: there is no amount that could vary`,
      hint: 'give its percentage or amount in the formula',
    });
  const named: Formula = {
    ...rest,
    constituents: rest.constituents.map((each, i) => (i === index ? { ...each, name } : each)),
  };
  const sums = weights.length > 0 ? weights : [formula.constituents.map(() => 0)];
  const corners = sums.map(each => cornerOf(each, formula, named, index, alone));
  const variation = vary(
    named,
    corners.map(({ around }) => around),
    index,
    others,
  );
  if (!variation.ok) return variation;
  const { domain, paths } = variation.value;
  const places = new Map(named.constituents.map((each, i) => [keyOf(each), i === index ? -1 : i]));
  const inside = new Map(alone.constituents.map((each, i) => [keyOf(each), i]));
  const lines = paths.map((path, c) =>
    formula.constituents.map((constituent): Affine => {
      const line = path[places.get(keyOf(constituent)) ?? -1] ?? nothing;
      const part = corners[c]!.delivered[inside.get(keyOf(constituent)) ?? -1];
      if (!part) return line;
      return { start: line.start, slope: Exact.fraction(line.slope.exact.add(part.exact.div(100))) };
    }),
  );
  const joined = distinctPaths(lines, null);
  return succeed({
    constituent: named.constituents[index]!,
    others,
    domain,
    at: x => sampleAt(formula.constituents, joined, x),
  });
}

/** Of all compositions of the raw material, and of what is around it, those whose weighted sums are greatest. */
function cornerOf(
  weights: readonly number[],
  formula: Formula,
  rest: Formula,
  index: number,
  alone: Formula,
): { readonly around: Composition; readonly delivered: Composition } {
  const byKey = new Map(formula.constituents.map((each, i) => [keyOf(each), weights[i]!]));
  const weightOf = (constituent: Constituent) => byKey.get(keyOf(constituent)) ?? 0;
  const inside = alone.constituents.map(weightOf);
  const delivered = alone.most(inside);
  const strength = delivered.reduce((sum, { value }, i) => sum + (value * inside[i]!) / 100, 0);
  const around = rest.most(rest.constituents.map((each, i) => (i === index ? strength : weightOf(each))));
  return { around, delivered };
}
