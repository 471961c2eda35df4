import { reaches } from '../../quantity/sum.ts';
import type { AcuteKey } from '../../reference/thresholds.ts';
import type { Context } from '../context.ts';
import type { Because, EstimateTerm } from '../facts/because.ts';
import { ofHealth } from '../facts/provision.ts';
import { termOf } from '../sums.ts';
import { isInhaled } from './_acute-estimate.ts';
import { type Counted, floorOf, type Gathered } from './_acute-gather.ts';

const termsOf = (counted: readonly Counted[]): EstimateTerm[] =>
  counted.map(({ ingredient, estimate: { value, converted, category } }) => ({
    constituent: ingredient.index,
    amount: ingredient.percent,
    weight: 1,
    over: value,
    converted: converted ? category : null,
  }));

/** What the sum leaves out, and what is unknown. */
function about({ basis }: Context, key: AcuteKey, { unknown, below }: Gathered) {
  const rules = basis.acuteToxicity;
  const leftOut = below.map(({ ingredient, estimate }) => ({
    constituent: ingredient.index,
    amount: ingredient.percent,
    from: floorOf(estimate, rules),
  }));
  return {
    key,
    unknown: unknown.map(ingredient => termOf(ingredient)),
    ...(leftOut.length > 0 && { leftOut }),
  };
}

/** Why no category follows where nothing enters the sum. */
export function becauseNothingCounts(context: Context, key: AcuteKey, gathered: Gathered): Because {
  const rules = context.basis.acuteToxicity;
  return {
    kind: 'nothing-counts',
    ...about(context, key, gathered),
    // By inhalation the figure differs by form, and no form counts.
    upTo: isInhaled(key) ? null : rules.countsUpTo[key],
    cites: citesWith(context, rules.formula.cite, gathered),
  };
}

/** The rule of one category for all, A.1.3.3(c). */
export function becauseShared(context: Context, key: AcuteKey, gathered: Gathered, ateMix: number): Because {
  const rules = context.basis.acuteToxicity;
  const category = gathered.shared!;
  return {
    kind: 'shared-category',
    ...about(context, key, gathered),
    terms: termsOf(gathered.counted),
    ateMix,
    limit: rules.categories[key][category]!,
    category,
    cites: [ofHealth(context.basis, rules.sameCategory.cite)],
  };
}

interface ByFormula {
  readonly ateMix: number;
  readonly category: string | null;
  readonly limit: number;
  readonly corrected: boolean;
}

/** The formula with what it leaves out. */
export function becauseOfFormula(
  context: Context,
  key: AcuteKey,
  gathered: Gathered,
  { ateMix, category, limit, corrected }: ByFormula,
): Because {
  const rules = context.basis.acuteToxicity;
  const paragraph = corrected ? rules.unknown.correctedAbove.cite : rules.formula.cite;
  const converted = gathered.counted.some(({ estimate }) => estimate.converted);
  return {
    kind: 'additivity',
    ...about(context, key, gathered),
    terms: termsOf(gathered.counted),
    ateMix,
    limit,
    category,
    corrected,
    cites: [
      ...citesWith(context, paragraph, null),
      ...(converted ? [ofHealth(context.basis, rules.conversion.cite)] : []),
      ...(category === null && leavesOpen(context, gathered)
        ? [ofHealth(context.basis, rules.unknown.relevantFrom.cite)]
        : []),
    ],
  };
}

/** Whether unknown ingredients are present from the percent at which the law asks for a statement. */
export const leavesOpen = ({ basis }: Context, { unknown }: Gathered): boolean =>
  unknown.some(({ percent }) => reaches(percent, basis.acuteToxicity.unknown.relevantFrom.percent));

/** A paragraph, with that on unknown ingredients where they leave the route open. */
const citesWith = (context: Context, paragraph: string, open: Gathered | null) => [
  ofHealth(context.basis, paragraph),
  ...(open && leavesOpen(context, open)
    ? [ofHealth(context.basis, context.basis.acuteToxicity.unknown.relevantFrom.cite)]
    : []),
];
