import type { Composition, Formula } from '../../formula/constituent.ts';
import { quietScale } from '../../quantity/scale.ts';
import type { Basis } from '../../reference/thresholds.ts';
import { classesOf } from '../classes-of.ts';
import type { Context } from '../context.ts';
import { type ClassifiedRecord, contextsOf } from '../contexts.ts';
import { type HarmonisedLookup, resolve } from '../resolve.ts';
import { worstOf } from '../worst.ts';
import { worstEnds } from './spread.ts';

/**
 * The compositions of 100 % at which the rules look where percents are ranges, with the greatest of each constituent;
 * the one composition where none is.
 */
export function compositionsOf(
  record: ClassifiedRecord,
  formula: Formula,
  basis: Basis,
  lookup: HarmonisedLookup,
): readonly Composition[] {
  const { constituents, ranged } = formula;
  const highs = constituents.map(({ high }) => high);
  if (!ranged) return [highs];
  const resolved = constituents.map((constituent, i) => resolve(constituent, i, lookup, record.form));
  const contextAt = contextsOf(record, formula, resolved, basis, quietScale);
  const asked: Composition[] = [];
  const listening = (percents: Composition): Context => {
    if (percents !== highs) asked.push(percents);
    return contextAt(percents);
  };
  classesOf(worstEnds(formula, listening, highs), worstOf);
  for (const [i] of constituents.entries()) asked.push(formula.most(constituents.map((_, j) => +(i === j))));
  return [...new Map(asked.map(each => [each.map(({ value }) => value).join(), each])).values()];
}
