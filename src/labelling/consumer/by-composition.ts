import type { Classification } from '../../classify/classification.ts';
import { compare, compareSum, type Part, sumOf } from '../../quantity/sum.ts';
import { partFor, specialRules, thickFrom } from '../../reference/consumer/hazard-data.ts';
import type { ConsumerKind, SpecialRule } from '../../reference/consumer/rules.ts';
import type { ConsumerHazard, ConsumerProduct, OpenHazard, UncoveredHazard } from './facts.ts';

/** A rule that composition meets. */
export interface SpecialFinding {
  readonly rule: SpecialRule;
  readonly percent: number;
  readonly constituents: readonly number[];
}

/** What composition brings by name. */
export interface CompositionFindings {
  readonly met: readonly SpecialFinding[];
  readonly hazards: readonly ConsumerHazard[];
  readonly uncovered: readonly UncoveredHazard[];
  readonly open: readonly OpenHazard[];
}

/**
 * Substances for which the law names words, symbols or a designation (16 CFR 1500.13, 1500.14(b), 1500.129). Ranges
 * count at their upper ends.
 */
export function byComposition(
  { constituents }: Pick<Classification, 'constituents'>,
  { viscosity, form }: Pick<ConsumerProduct, 'viscosity' | 'form'>,
): CompositionFindings {
  const met: SpecialFinding[] = [];
  const uncovered: UncoveredHazard[] = [];
  const open: OpenHazard[] = [];
  for (const rule of specialRules) {
    const counting = constituents.flatMap(({ cas, high }, constituent) => {
      const weight = cas === null ? null : partFor(rule, cas);
      return weight === null ? [] : [{ constituent, amount: high, weight }];
    });
    const parts: readonly Part[] = counting;
    const percent = sumOf(parts);
    if (counting.length === 0 || percent <= 0 || compareSum(parts, rule.limit) < 0) continue;
    const found = { rule, percent, constituents: counting.map(({ constituent }) => constituent) };
    if (rule.thin && form === 'liquid' && viscosity && compare(viscosity, thickFrom) >= 0)
      uncovered.push({ code: rule.id, why: 'thick', cite: rule.thin });
    else if (rule.condition)
      open.push({ what: 'epoxy', of: [rule.id], constituents: found.constituents, cite: rule.cite });
    else met.push(found);
  }
  const unnamed = constituents.flatMap(({ cas, water }, at) => (cas === null && !water ? [at] : []));
  if (unnamed.length > 0)
    open.push({
      what: 'no-cas',
      of: [],
      constituents: unnamed,
      cite: '16 CFR 1500.13; 1500.14(b); 1500.129',
    });
  return { met, hazards: met.flatMap(hazardsOf), uncovered, open };
}

const hazardsOf = ({ rule, percent, constituents }: SpecialFinding): readonly ConsumerHazard[] =>
  rule.statements.map(statement => ({
    kind: (statement === 'strong-sensitizer' ? statement : 'toxic') as ConsumerKind,
    statement,
    codes: [],
    cite: rule.cite,
    from: { kind: 'composition', rule: rule.id, percent, limit: rule.limit },
    settledBy: [],
    constituents,
  }));
