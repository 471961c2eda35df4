import { Exact } from '../quantity/exact.ts';
import type { ProductRecord } from '../record/product-record.ts';
import { type Diagnostic, fail, hasErrors, type Outcome, succeed } from '../report/diagnostic.ts';
import { basisOf } from './_amounts.ts';
import { boundsOf } from './_bounds.ts';
import { identitiesOf } from './_constituents.ts';
import { lineError } from './_findings.ts';
import { mostOf } from './_most.ts';
import { planOf } from './_plan.ts';
import type { Constituent, Formula } from './constituent.ts';
import { reacted } from './react.ts';

/**
 * Expands a formula to its constituents in percent by weight, by volume where the form is gas. Exact throughout.
 * Weights and volumes are shares of their total, of `batch` where the record gives one, or of what percentages
 * leave. Constituents of one CAS number, or without one of one name, are one. What `reacts` names has reacted.
 * @returns findings where the lines do not determine 100 % within 0.01, or contradict each other.
 */
export function expandFormula(record: ProductRecord): Outcome<Formula> {
  const findings: Diagnostic[] = [];
  const { plan, ranges } = planOf(record, basisOf(record.form), findings);
  const identities = identitiesOf(plan, findings);
  if (hasErrors(findings)) return fail(...findings);

  const bounds = boundsOf(plan);
  const keys = [...identities.keys()].filter(key => bounds.get(key)![1].gt(0));
  for (const [key, { line }] of identities)
    if (!bounds.get(key)![1].gt(0))
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
    const percents = mostOf(plan, key => weights[places.get(key) ?? -1] ?? 0);
    return keys.map(key => Exact.fraction(percents.get(key)!));
  };
  const formula = { constituents, ranged: ranges.length > 0, most };
  if (record.reacts.length === 0) return succeed(formula, findings);
  const after = reacted(formula, record.reacts, basisOf(record.form) === 'weight');
  return after.ok
    ? succeed(after.value, [...findings, ...after.diagnostics])
    : fail(...findings, ...after.diagnostics);
}
