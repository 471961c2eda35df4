import type { AllocationRow } from '../../reference/label-data/allocation.ts';
import type { LabelData } from '../../reference/label-data/load-label-data.ts';
import type { PrecautionRules } from '../../reference/label-data/rules.ts';
import type { LabelledProduct } from '../labelled-product.ts';
import { codeOf, contains, type Precaution, type Progress } from './_precaution.ts';

/**
 * Where a basis limits the number of statements (CLP Article 28(3): not more than six, unless the nature and severity
 * of the hazards call for more) a set that covers every hazard: prevention of each, first aid for each route, what
 * the general public must read, what the record keeps; then the first in the order of priority up to the number. All
 * others are named among what is left off.
 */
export function proposeWithin(
  { precautions, omitted }: Progress,
  labelData: LabelData,
  product: LabelledProduct,
): Progress {
  const { precautions: rules, rules: labelRules } = labelData;
  const limit = labelRules.precautionLimit;
  if (!limit || precautions.length <= limit.most) return { precautions, omitted };
  const { ranks, consumerFirst } = rules.priority;
  const grave = ({ rows }: Precaution) => rows.some(({ signalWord }) => signalWord === 'Danger');
  const matches = (precaution: Precaution) => (code: string) => contains(precaution, code);
  const rank = (precaution: Precaution): number => {
    const at = ranks.findIndex(codes => codes.some(matches(precaution)));
    return (at < 0 ? ranks.length : at) - (grave(precaution) ? 0.5 : 0);
  };
  const rows = [...new Set(precautions.flatMap(each => each.rows))];
  const covering = new Set(rows.flatMap(row => coverOf(row, precautions, rules)));
  const stays = (precaution: Precaution): boolean =>
    covering.has(precaution) ||
    isFirstAid(precaution, rules) ||
    named(precaution, product) ||
    (product.consumer === true && consumerFirst.some(matches(precaution)));
  const ranked = [...precautions].sort((a, b) => rank(a) - rank(b) || (codeOf(a) < codeOf(b) ? -1 : 1));
  const needed = ranked.filter(stays);
  const others = ranked.filter(each => !stays(each)).slice(0, Math.max(0, limit.most - needed.length));
  const kept = new Set([...needed, ...others]);
  const gone = ranked.filter(precaution => !kept.has(precaution));
  return {
    precautions: precautions.filter(precaution => kept.has(precaution)),
    omitted: [
      ...omitted,
      ...gone.map(each => ({
        what: codeOf(each),
        why: { kind: 'beyond-proposal', most: limit.most } as const,
        cite: limit.cite,
      })),
    ],
  };
}

/** Whether the record keeps or adds the statement by name. */
const named = (precaution: Precaution, { keep = [], add = [] }: LabelledProduct): boolean =>
  keep.includes(codeOf(precaution)) || add.includes(codeOf(precaution));

/** A response that begins with a route of exposure or with "If exposed or concerned". */
const isFirstAid = ({ parts, group }: Precaution, { medical }: PrecautionRules): boolean =>
  group === 'response' && parts.some(part => medical.routes.includes(part) || part === medical.any);

/** What the row needs of the statements that are left: its telling prevention, else its storage. */
function coverOf(
  row: AllocationRow,
  precautions: readonly Precaution[],
  { priority, overriding }: PrecautionRules,
): Precaution[] {
  const called = (
    row.precautions.prevention.length > 0 ? row.precautions.prevention : row.precautions.storage
  ).map(({ code }) => code);
  const at = (code: string): Precaution | undefined =>
    precautions.find(each => contains(each, code)) ??
    precautions.find(each =>
      overriding.some(({ stays, goes }) => goes.includes(code) && contains(each, stays)),
    );
  const ordered = [...called].sort((a, b) => place(a) - place(b)).filter(at);
  const [first] = ordered;
  if (first === undefined) return [];
  const pair = priority.together.find(codes => codes.includes(first)) ?? [];
  return ordered.filter(code => code === first || pair.includes(code)).map(code => at(code)!);

  function place(code: string): number {
    const found = priority.cover.indexOf(code);
    return found < 0 ? priority.cover.length : found;
  }
}
