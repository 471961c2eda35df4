import { examineNumber, groupingGtin } from '../barcode/gtin.ts';

/** What is to be told of the numbers of a pack and its case. */
export type HierarchyFact =
  | { readonly id: 'unit-missing' | 'case-missing' }
  | { readonly id: 'same-number'; readonly gtin: string }
  | {
      readonly id: 'other-item';
      readonly case: string;
      readonly contained: string;
      readonly unit: string;
      /** Numbers that would stand for this pack, with indicators 1 to 8. */
      readonly right: string;
    }
  | { readonly id: 'variable-measure'; readonly case: string }
  | { readonly id: 'own-number'; readonly case: string; readonly unit: string }
  | { readonly id: 'case-of-one'; readonly case: string }
  | { readonly id: 'unit-is-grouping'; readonly unit: string };

/** Facts under which a label of the case would be wrong. */
export const WRONG: readonly HierarchyFact['id'][] = ['same-number', 'other-item', 'variable-measure'];

const asFourteen = (gtin: string): string => gtin.padStart(14, '0');

/**
 * Whether the number of a case fits that of the pack in it (GS1 General Specifications 2.1.6, 4.2): a GTIN-14 with
 * indicator 1 to 8 repeats the twelve digits of the pack, indicator 9 is for variable measure, and a case may have a
 * GTIN-12 or -13 of its own, which no arithmetic can check.
 * @param unit GTIN of the pack, or null
 * @param grouping GTIN of the case, or null
 */
export function gtinHierarchy(unit: string | null, grouping: string | null, count: number): HierarchyFact[] {
  if (unit === null || grouping === null)
    return [
      ...(unit === null ? [{ id: 'unit-missing' as const }] : []),
      ...(grouping === null ? [{ id: 'case-missing' as const }] : []),
    ];
  const facts: HierarchyFact[] = [];
  const [one, all] = [asFourteen(unit), asFourteen(grouping)];
  if (one === all) return [{ id: 'same-number', gtin: unit }];
  if (one[0] !== '0') facts.push({ id: 'unit-is-grouping', unit });
  if (all[0] === '9') facts.push({ id: 'variable-measure', case: grouping });
  else if (all[0] === '0') facts.push({ id: 'own-number', case: grouping, unit });
  else if (all.slice(1, -1) !== one.slice(1, -1)) {
    // As many digits as the number of the pack has, so that the two can be compared by eye.
    const contained = (examineNumber(grouping).readings[0]?.contained ?? '').padStart(unit.length, '0');
    const right = groupingGtin(unit, Number(all[0]));
    facts.push({ id: 'other-item', case: grouping, contained, unit, right });
  }
  if (count === 1) facts.push({ id: 'case-of-one', case: grouping });
  return facts;
}
