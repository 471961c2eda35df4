import Fraction from 'fraction.js';
import { Exact } from '../quantity/exact.ts';
import type { ProductRecord } from '../record/product-record.ts';
import { type Diagnostic, fail, hasErrors, type Outcome, succeed } from '../report/diagnostic.ts';
import { basisOf } from './_amounts.ts';
import { type Bounds, boundsOf } from './_bounds.ts';
import { type Identity, identitiesOf } from './_constituents.ts';
import { lineError } from './_findings.ts';
import { mostOf } from './_most.ts';
import { type Plan, planOf } from './_plan.ts';
import { react } from './_react.ts';
import type { Constituent, Formula } from './constituent.ts';

/**
 * Expands a formula to its constituents in percent by weight, by volume where the form is gas. Exact throughout.
 * Weights and volumes are shares of their total, of `batch` where the record gives one, or of what percentages
 * leave. Constituents of one CAS number, or without one of one name, are one. Where the record says that some react,
 * what is left is told.
 * @returns findings where the lines do not determine 100 % within 0.01, or contradict each other.
 */
export function expandFormula(record: ProductRecord): Outcome<Formula> {
  const findings: Diagnostic[] = [];
  const { plan, ranges } = planOf(record, basisOf(record.form), findings);
  const weighed = identitiesOf(plan, findings);
  if (hasErrors(findings)) return fail(...findings);

  const ranged = ranges.length > 0;
  const filled =
    record.reacts.length > 0 ? reacted(record, plan, weighed, ranged, findings) : unreacted(plan, weighed);
  if (hasErrors(findings)) return fail(...findings);
  const { identities, bounds, consumed } = filled;
  const keys = [...identities.keys()].filter(key => bounds.get(key)![1].gt(0));
  for (const [key, { line }] of identities)
    if (!bounds.get(key)![1].gt(0) && !consumed.has(key))
      findings.push({
        ...lineError(
          line,
          'nothing-of-it',
          `${line.name} comes to 0 %: it is left out`,
          'give its percentage or amount, or take the line out',
        ),
        severity: 'warning',
      });
  keys.sort((a, b) => bounds.get(b)![1].compare(bounds.get(a)![1]));
  const constituents = keys.map((key): Constituent => {
    const { name, cas, given, via, water, tradeSecret, undisclosed } = identities.get(key)!;
    const [low, high] = bounds.get(key)!.map(Exact.fraction) as [Exact, Exact];
    return {
      name,
      cas,
      low,
      high,
      given,
      via,
      water,
      ...(tradeSecret && { tradeSecret }),
      ...(undisclosed && { undisclosed }),
    };
  });
  const places = new Map(keys.map((key, i) => [key, i]));
  const most = (weights: readonly number[]) => {
    const percents = filled.most(key => weights[places.get(key) ?? -1] ?? 0);
    return keys.map(key => Exact.fraction(percents.get(key)!));
  };
  return succeed({ constituents, ranged, most }, findings);
}

type Percents = ReadonlyMap<string, Fraction>;

/** What the batch holds: who is in it, between which percents, and the composition that is worst for a sum. */
interface Batch {
  readonly identities: ReadonlyMap<string, Identity>;
  readonly bounds: ReadonlyMap<string, Bounds>;
  readonly consumed: ReadonlySet<string>;
  readonly most: (weightOf: (key: string) => number) => Percents;
}

const unreacted = (plan: Plan, identities: Batch['identities']): Batch => ({
  identities,
  bounds: boundsOf(plan),
  consumed: new Set(),
  most: weightOf => mostOf(plan, weightOf),
});

/**
 * What is left after the reactions. They are no straight lines: the reactant that is used up first decides. So the
 * batch is looked at with each constituent at its most and at its least, before they react.
 */
function reacted(
  record: ProductRecord,
  plan: Plan,
  weighed: Batch['identities'],
  ranged: boolean,
  findings: Diagnostic[],
): Batch {
  const ends = ranged ? [...weighed.keys()] : [...weighed.keys()].slice(0, 1);
  const before = ends.flatMap(key =>
    (ranged ? [1, -1] : [1]).map(weight => mostOf(plan, other => (other === key ? weight : 0))),
  );
  const { identities, corners, consumed } = react(record, weighed, before, findings);
  const zero = new Fraction(0);
  const percentOf = (percents: Percents, key: string): Fraction => percents.get(key) ?? zero;
  const bounds = new Map(
    [...identities.keys()].map(key => {
      const all = corners.map(percents => percentOf(percents, key));
      const least = all.reduce((a, b) => (b.lt(a) ? b : a));
      return [key, [least, all.reduce((a, b) => (b.gt(a) ? b : a))] as const];
    }),
  );
  const sumOf = (percents: Percents, weightOf: (key: string) => number): number =>
    [...percents].reduce((sum, [key, percent]) => sum + weightOf(key) * percent.valueOf(), 0);
  const whole = corners.map(
    percents => new Map([...identities.keys()].map(key => [key, percentOf(percents, key)])),
  );
  return {
    identities,
    bounds,
    consumed,
    most: weightOf =>
      whole.reduce((best, each) => (sumOf(each, weightOf) > sumOf(best, weightOf) ? each : best)),
  };
}
