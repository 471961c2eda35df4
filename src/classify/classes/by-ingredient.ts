import type { SpecificLimit } from '../../notation/limit.ts';
import { Exact } from '../../quantity/exact.ts';
import type { Scale } from '../../quantity/scale.ts';
import { metalGenericLimitsIn } from '../../reference/harmonised/entry-notes.ts';
import type { CutOffTable } from '../../reference/thresholds.ts';
import { constant } from '../constant.ts';
import { type ClassResult, type Context, hazardIn } from '../context.ts';
import type { Because, Comparison } from '../facts/because.ts';
import { ofHealth } from '../facts/provision.ts';
import { hazardsOf, type Ingredient, limitsOf } from '../ingredient.ts';
import type { ReadingId } from '../readings.ts';
import { figure } from '../sums.ts';

/** An ingredient that reaches its limit for a category of the mixture. */
export interface Trigger {
  readonly ingredient: Ingredient;
  /** Category of the ingredient. */
  readonly own: string;
  /** Category that the mixture takes. */
  readonly result: string;
  readonly limit: Exact;
  readonly specific: boolean;
  /** H-code with letters where the ingredient or the limit has one. */
  readonly statement: string | null;
}

/** A limit that an ingredient has for a class, whether reached or not. */
export interface Candidate extends Trigger {
  readonly reached: boolean;
}

/** Whether the lower bound of a specific limit is passed: the upper end gives way to the more severe category. */
export function overLow(scale: Scale, percent: Exact, { low, lowInclusive }: SpecificLimit): boolean {
  if (!low) return false;
  const order = scale.compare(percent, low.value);
  return lowInclusive ? order >= 0 : order > 0;
}

/** A limit of the table for an ingredient; of a compound of a metal the metal counts (CLP Annex VI 1.1.3.2, Note 1). */
export function genericLimit(
  { basis, scale }: Context,
  { data, percent }: Ingredient,
  from: number,
): Pick<Candidate, 'limit' | 'reached'> {
  const metal = metalGenericLimitsIn.includes(basis.id) ? data.metal : null;
  return metal === null
    ? { limit: figure(from), reached: scale.reaches(percent, from) }
    : {
        limit: Exact.decimal(String(from / metal)),
        reached: scale.meets([{ amount: percent, weight: metal }], from),
      };
}

/** Limits of every ingredient for one class: specific ones first, else the table's (A.0.4.3; CLP Article 10). */
export function candidatesOf(context: Context, hazardClass: string, table: CutOffTable): Candidate[] {
  const { mixture, applyLimits, scale } = context;
  const found: Candidate[] = [];
  for (const ingredient of mixture.ingredients) {
    const hazards = hazardsOf(ingredient, hazardClass);
    const limits = applyLimits
      ? limitsOf(ingredient, hazardClass).filter(limit => isOfTable(limit, table))
      : [];
    for (const limit of limits)
      found.push({
        ingredient,
        own: limit.category,
        result: resultFor(limit.category, table),
        limit: limit.low!,
        specific: true,
        statement: limit.statement ?? hazards[0]?.statement ?? null,
        reached: overLow(scale, ingredient.percent, limit),
      });
    // A limit replaces the table's figures for its own result alone: STOT Category 1 has a second one, for Category 2.
    const replaced = (result: string) =>
      limits.some(({ category }) => resultFor(category, table)[0] === result[0]);
    for (const hazard of hazards)
      for (const row of table.rows) {
        if (row.ingredient !== hazard.category || replaced(row.result)) continue;
        const from = mixture.form === 'gas' && row.fromGas !== undefined ? row.fromGas : row.from;
        found.push({
          ingredient,
          own: hazard.category,
          result: row.result,
          ...genericLimit(context, ingredient, from),
          specific: false,
          statement: hazard.statement,
        });
      }
  }
  return found;
}

// STOT SE 3 has a rule of its own; its limits do not enter the table of Categories 1 and 2.
const isOfTable = ({ low, category }: SpecificLimit, { rows }: CutOffTable): boolean =>
  low !== null && rows.some(({ result }) => result[0] === category[0]);

const resultFor = (category: string, table: CutOffTable): string =>
  table.rows.find(({ ingredient }) => ingredient === category)?.result ?? category;

/** Lowest cut-off of a category of ingredient in percent; null where the table does not name it. */
export function cutOffOf(table: CutOffTable | undefined, category: string): number | null {
  const rows = table?.rows.filter(({ ingredient }) => ingredient === category) ?? [];
  return rows.length > 0 ? Math.min(...rows.map(({ from }) => from)) : null;
}

/** Lowest cut-off of a table in percent: from there an ingredient without data leaves the class undecided. */
export const floorOf = (table: CutOffTable): number => Math.min(...table.rows.map(({ from }) => from));

/** The ingredients that decide, or those that stay below; that there is none where no ingredient has the class. */
export function becauseOfCandidates(
  { basis }: Context,
  hazardClass: string,
  table: CutOffTable,
  candidates: readonly Candidate[],
): Because {
  const cite = ofHealth(basis, table.cite);
  const [first] = candidates;
  if (!first)
    return {
      kind: 'none',
      rule: 'not-classified-so',
      class: hazardClass,
      from: [floorOf(table)],
      cites: [cite],
    };
  return {
    kind: 'ingredients',
    rule: first.reached ? 'at-cut-off' : 'below-cut-off',
    cites: first.specific ? [cite, ofHealth(basis, basis.specificLimits.cite)] : [cite],
    comparisons: candidates.map(comparisonOf),
  };
}

const comparisonOf = ({ ingredient, limit, reached, own, result, specific }: Candidate): Comparison => ({
  constituent: ingredient.index,
  amount: ingredient.percent,
  limit,
  reached,
  own,
  result,
  specific,
});

/** Most severe first, then by the larger share. */
const bySeverity =
  (scale: Scale) =>
  (a: Candidate, b: Candidate): number =>
    a.result < b.result
      ? -1
      : a.result > b.result
        ? 1
        : scale.compareValues(b.ingredient.percent, a.ingredient.percent);

/**
 * A class that one ingredient at its cut-off decides, without adding up: A.4.3.3, A.5.3.1, A.6.3.1, A.7.3.1, A.8.3.4.1,
 * A.9.3.4.1; CLP and UN 3.4.3.3, 3.5.3.1, 3.6.3.1, 3.7.3.1, 3.8.3.4.1, 3.9.3.4.1.
 */
export function byIngredient(
  context: Context,
  hazardClass: string,
  table: CutOffTable,
): { result: ClassResult; triggers: readonly Candidate[]; reached: readonly Candidate[] } {
  if (!context.mixture.classes.has(hazardClass)) return noneOf(context, hazardClass, table);
  const candidates = candidatesOf(context, hazardClass, table);
  const reached = candidates.filter(candidate => candidate.reached).sort(bySeverity(context.scale));
  const floor = floorOf(table);
  const worst = reached[0];
  if (!worst) {
    const because = becauseOfCandidates(context, hazardClass, table, candidates);
    return {
      result: { class: hazardClass, outcome: 'not-classified', because, readings: readingsOf(table), floor },
      triggers: [],
      reached,
    };
  }
  const triggers = reached.filter(({ result }) => result === worst.result);
  const hazard = hazardIn(hazardClass, worst.result);
  const because = becauseOfCandidates(context, hazardClass, table, triggers);
  const readings = readingsOf(table);
  return {
    result: { class: hazardClass, outcome: 'classified', hazard, because, readings, floor },
    triggers,
    reached,
  };
}

/** Readings on which every result of a table rests. */
export const readingsOf = ({ twoCutOffs }: CutOffTable): readonly ReadingId[] => (twoCutOffs ? higher : none);
const higher = ['two-cut-offs'] as const;
const none = [] as const;

/** The outcome where no ingredient has a hazard or a limit of the class. */
export const noneOf = (context: Context, hazardClass: string, table: CutOffTable) =>
  constant(context.basis, hazardClass, () => ({
    result: {
      class: hazardClass,
      outcome: 'not-classified' as const,
      because: becauseOfCandidates(context, hazardClass, table, []),
      floor: floorOf(table),
    },
    triggers: [],
    reached: [],
  }));
