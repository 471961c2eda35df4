import type Fraction from 'fraction.js';
import { Exact } from '../quantity/exact.ts';
import type { ProductRecord } from '../record/product-record.ts';
import { type Diagnostic, fail, hasErrors, type Outcome, succeed } from '../report/diagnostic.ts';
import { basisOf } from './_amounts.ts';
import { identitiesOf } from './_constituents.ts';
import { boundsOf, cornersOf, MAX_FULL_RANGES, percentsAt } from './_corners.ts';
import { lineError } from './_findings.ts';
import { planOf } from './_plan.ts';
import { react } from './_react.ts';
import type { Constituent, Formula } from './constituent.ts';

/**
 * Expands a formula to its constituents in percent by weight, by volume where the form is gas. Exact throughout.
 * Weights and volumes are shares of their total, of `batch` where the record gives one, or of what percentages
 * leave. Constituents of one CAS number, or without one of one name, are one. Where the record names reactions, what is
 * left of them is the mixture.
 * @returns findings where the lines do not determine 100 % within 0.01, or contradict each other.
 */
export function expandFormula(record: ProductRecord): Outcome<Formula> {
  const findings: Diagnostic[] = [];
  const { plan, ranges } = planOf(record, basisOf(record.form), findings);
  const weighedIn = identitiesOf(plan, findings);
  if (hasErrors(findings)) return fail(...findings);

  const weighed = cornersOf(ranges).map(corner => percentsAt(plan, corner));
  const { identities, corners, consumed } = react(record, weighedIn, weighed, findings);
  if (hasErrors(findings)) return fail(...findings);
  const full = ranges.length <= MAX_FULL_RANGES;
  const atCorners = full || record.reacts.length > 0;
  const low = atCorners ? extreme(corners, (a, b) => a.lt(b)) : boundsOf(plan, 'low');
  const high = atCorners ? extreme(corners, (a, b) => a.gt(b)) : boundsOf(plan, 'high');

  const keys = [...identities.keys()].filter(key => high.get(key)!.gt(0));
  for (const [key, { line }] of identities)
    if (!high.get(key)!.gt(0) && !consumed.has(key))
      findings.push({
        ...lineError(
          line,
          'nothing-of-it',
          `${line.name} comes to 0 %: it is left out`,
          'give its percentage or amount, or take the line out',
        ),
        severity: 'warning',
      });
  keys.sort((a, b) => high.get(b)!.compare(high.get(a)!));
  const constituents = keys.map((key): Constituent => {
    const { name, cas, given, via, water, tradeSecret, undisclosed } = identities.get(key)!;
    return {
      name,
      cas,
      low: Exact.fraction(low.get(key)!),
      high: Exact.fraction(high.get(key)!),
      given,
      via,
      water,
      ...(tradeSecret && { tradeSecret }),
      ...(undisclosed && { undisclosed }),
    };
  });
  return succeed(
    {
      constituents,
      corners: corners.map(percents => keys.map(key => Exact.fraction(percents.get(key)!))),
    },
    full ? findings : [...findings, manyRanges(record, ranges.length)],
  );
}

function extreme(
  corners: readonly ReadonlyMap<string, Fraction>[],
  beats: (a: Fraction, b: Fraction) => boolean,
): ReadonlyMap<string, Fraction> {
  if (corners.length === 1) return corners[0]!;
  const found = new Map(corners[0]!);
  for (const corner of corners)
    for (const [key, percent] of corner) if (beats(percent, found.get(key)!)) found.set(key, percent);
  return found;
}

const manyRanges = (record: ProductRecord, count: number): Diagnostic => ({
  code: 'many-ranges',
  severity: 'warning',
  message: `the formula has ${count} ranges; not all combinations of their ends are computed, only each end by itself`,
  hint: `give at most ${MAX_FULL_RANGES} ranges, or single percentages where they are known`,
  at: record.formula[0]?.at ?? { file: record.file },
  path: 'formula',
});
