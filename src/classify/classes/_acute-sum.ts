import type { Scale } from '../../quantity/scale.ts';
import { type Part, sumOf, tidy } from '../../quantity/sum.ts';
import type { AcuteKey, AcuteToxicityRules } from '../../reference/thresholds.ts';
import { acuteCategories } from '../acute-categories.ts';
import type { Context } from '../context.ts';
import type { Because } from '../facts/because.ts';
import { ofHealth } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';
import type { ReadingId } from '../readings.ts';
import { isInhaled } from './_acute-estimate.ts';
import { type Counted, gatherEstimates } from './_acute-gather.ts';
import { becauseNothingCounts, becauseOfFormula, becauseShared } from './_acute-reasons.ts';

/** The acute toxicity of a mixture by one route and form. */
export interface AcuteSum {
  readonly key: AcuteKey;
  readonly ateMix: number | null;
  readonly category: string | null;
  /** Percent of ingredients of unknown toxicity that are present at 1 % or more, for the statement. */
  readonly unknown: number;
  /** Bound of the category, or of the last one; null where nothing counts. */
  readonly limit: number | null;
  /** Ci / ATEi of the ingredients that count. */
  readonly parts: readonly Part[];
  /** The reason; of three forms of inhalation only that of one is told. */
  readonly explain: () => Because;
  readonly readings: readonly ReadingId[];
  readonly warnings: readonly Warning[];
}

/**
 * Additivity formula, A.1.3.6.1 and A.1.3.6.2.4; CLP and UN 3.1.3.6.1 and 3.1.3.6.2.3:
 * 100 / ATEmix = sum of Ci / ATEi, or (100 - unknown) / ATEmix where more than 10 % is unknown.
 */
export function acuteSum(context: Context, key: AcuteKey): AcuteSum {
  const { basis, scale } = context;
  const rules = basis.acuteToxicity;
  const used = new Set<ReadingId>();
  const gathered = gatherEstimates(context, key, used);
  const { counted } = gathered;
  // A category that counts in the sum, and that the basis does not give.
  const shared =
    gathered.shared !== null && gathered.shared in rules.categories[key] ? gathered.shared : null;
  if (isInhaled(key) && counted.length > 0) used.add('inhalation-form').add('inhalation-forms-apart');
  if (key === 'vapour' && counted.length > 0) used.add('vapour-near-gas-phase');
  const parts: Part[] = [];
  for (const { ingredient, estimate } of counted)
    parts.push({ amount: ingredient.percent, weight: 1, over: estimate.value });
  const unknownParts: Part[] = [];
  const stated: Part[] = [];
  for (const { percent } of gathered.unknown) {
    const part = { amount: percent, weight: 1 };
    unknownParts.push(part);
    if (scale.reaches(percent, rules.unknown.relevantFrom.percent)) stated.push(part);
  }
  const unknown = sumOf(stated);
  const corrected = scale.compareSum(unknownParts, rules.unknown.correctedAbove.percent) > 0;
  if (unknownParts.length > 0) used.add('unknown-correction').add('unknown-statement');
  if (shared && parts.length > 0) used.add('same-category');
  const readings = [...used];
  if (parts.length === 0) {
    const explain = () => becauseNothingCounts(context, key, gathered);
    return {
      key,
      ateMix: null,
      category: null,
      unknown,
      limit: null,
      parts,
      explain,
      readings,
      warnings: [],
    };
  }

  const bounds = rules.categories[key];
  const warnings = contradictions(context, key, counted);
  const numerator = corrected ? 100 - sumOf(unknownParts) : 100;
  const ateMix = tidy(numerator / sumOf(parts));
  if (shared) {
    const explain = () => becauseShared(context, key, gathered, ateMix);
    const limit = bounds[shared]!;
    return { key, ateMix, category: shared, unknown, limit, parts, explain, readings, warnings };
  }
  const category = categoryBySum(scale, parts, bounds, corrected ? unknownParts : []);
  const limit = bounds[category ?? lastOf(bounds)]!;
  const explain = () => becauseOfFormula(context, key, gathered, { ateMix, category, limit, corrected });
  return { key, ateMix, category, unknown, limit, parts, explain, readings, warnings };
}

/** Ingredients whose estimate lies in another category than the one listed: one of the two is wrong. */
function contradictions({ basis }: Context, key: AcuteKey, counted: readonly Counted[]): Warning[] {
  const warnings: Warning[] = [];
  for (const { ingredient, estimate } of counted) {
    if (!estimate.contradicts) continue;
    warnings.push({
      id: 'ate-contradicts-category',
      constituent: ingredient.index,
      key,
      value: estimate.value,
      category: estimate.category,
      listed: estimate.contradicts,
      cites: [ofHealth(basis, basis.acuteToxicity.conversion.cite)],
    });
  }
  return warnings;
}

/** The mildest category that the basis has. */
const lastOf = (bounds: AcuteToxicityRules['categories'][AcuteKey]): string =>
  acuteCategories.findLast(category => bounds[category] !== undefined)!;

/** The most severe category whose bound ATEmix does not exceed: ATEmix <= L is sum(Ci L / ATEi) + unknown >= 100. */
function categoryBySum(
  scale: Scale,
  parts: readonly Part[],
  bounds: AcuteToxicityRules['categories'][AcuteKey],
  unknown: readonly Part[],
): string | null {
  for (const category of acuteCategories) {
    const bound = bounds[category];
    if (bound !== undefined && scale.meetsScaled(parts, bound, unknown, 100)) return category;
  }
  return null;
}
