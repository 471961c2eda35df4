import { show, showBeside, sumOf } from '../../quantity/sum.ts';
import type { AcuteKey, AcuteToxicityRules } from '../../reference/thresholds.ts';
import type { Because } from '../classification.ts';
import { type Context, citeHealth } from '../context.ts';
import { type Counted, floorOf, type Gathered, isInhaled } from './_acute-gather.ts';

/** Units of estimates by route and form. */
export const unitOf: Readonly<Record<AcuteKey, string>> = {
  oral: 'mg/kg',
  dermal: 'mg/kg',
  gas: 'ppmV',
  vapour: 'mg/L',
  mist: 'mg/L',
};

const termsOf = (counted: readonly Counted[]): NonNullable<Because['terms']> =>
  counted.map(({ ingredient: { name, percent }, estimate: { value } }) => ({
    name,
    percent: percent.value,
    weight: value.value,
  }));

/** What the sum leaves out, and what is unknown. */
function notes({ unknown, below }: Gathered, rules: AcuteToxicityRules): string {
  const left = below.map(
    ({ ingredient: { name, percent }, estimate }) =>
      `${showBeside(percent.value, floorOf(estimate, rules))} % ${name} < ${show(floorOf(estimate, rules))} %`,
  );
  const names = unknown.map(({ name }) => name).join(', ');
  const share = sumOf(unknown.map(({ percent }) => ({ amount: percent, weight: 1 })));
  return [
    left.length > 0 ? `; not relevant: ${left.join(', ')}` : '',
    unknown.length > 0
      ? `; ${show(share)} % of the mixture is of unknown toxicity by this route (${names})`
      : '',
  ].join('');
}

/** Why no category follows where nothing enters the sum. */
export function becauseNothingCounts({ basis }: Context, key: AcuteKey, gathered: Gathered): Because {
  const rules = basis.acuteToxicity;
  // By inhalation the figure differs by form, and no form counts.
  const upTo = isInhaled(key) ? '' : ` (up to ${show(rules.countsUpTo[key])} ${unitOf[key]})`;
  return {
    rule: 'no ingredient of known acute toxicity',
    cite: citeHealth(basis, rules.formula.cite),
    working: `no relevant ingredient has a category by this route or an estimate that counts${upTo}${notes(gathered, rules)}`,
    terms: [],
  };
}

/** The rule of one category for all, A.1.3.3(c). */
export function becauseShared(
  { basis }: Context,
  key: AcuteKey,
  { counted, shared }: Gathered,
  ateMix: number,
): Because {
  const rules = basis.acuteToxicity;
  return {
    rule: 'all ingredients within one category',
    cite: citeHealth(basis, rules.sameCategory.cite),
    working: `every ingredient is in Category ${shared} by this route, so the mixture is too (by the formula ATEmix = ${show(ateMix)} ${unitOf[key]})`,
    total: ateMix,
    limit: rules.categories[key][shared!],
    unit: unitOf[key],
    terms: termsOf(counted),
  };
}

interface ByFormula {
  readonly ateMix: number;
  readonly category: string | null;
  readonly limit: number;
  readonly corrected: boolean;
}

/** The formula as worked on paper, with what it leaves out. */
export function becauseOfFormula(
  { basis }: Context,
  key: AcuteKey,
  gathered: Gathered,
  { ateMix, category, limit, corrected }: ByFormula,
): Because {
  const rules = basis.acuteToxicity;
  const { counted, unknown } = gathered;
  const unit = unitOf[key];
  const share = sumOf(unknown.map(({ percent }) => ({ amount: percent, weight: 1 })));
  const quotients = counted.map(
    ({ ingredient: { name, percent }, estimate }) =>
      `${show(percent.value)}/${show(estimate.value.value)} ${name}${estimate.converted ? ` (Category ${estimate.category})` : ''}`,
  );
  const sum = sumOf(
    counted.map(({ ingredient, estimate }) => ({
      amount: ingredient.percent,
      weight: 1,
      over: estimate.value,
    })),
  );
  const cites = [
    corrected ? rules.unknown.correctedAbove.cite : rules.formula.cite,
    ...(counted.some(({ estimate }) => estimate.converted) ? [rules.conversion.cite] : []),
  ];
  return {
    rule: corrected ? 'additivity formula corrected for unknown ingredients' : 'additivity formula',
    cite: citeHealth(basis, cites.join('; ')),
    working:
      `${corrected ? `(100 - ${show(share)})` : '100'} / ATEmix = ${quotients.join(' + ')} = ${show(sum)}; ` +
      `ATEmix = ${showBeside(ateMix, limit)} ${unit} ${category ? '<=' : '>'} ${show(limit)} ${unit}${category ? ` (Category ${category})` : ''}` +
      notes(gathered, rules),
    total: ateMix,
    limit,
    unit,
    terms: termsOf(counted),
  };
}
