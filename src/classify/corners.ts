import type { ClassResult } from './context.ts';

const outcomeRank = { classified: 3, 'insufficient-data': 2, 'not-classified': 1, 'not-applicable': 0 } as const;

// Letters order sub-categories (1A before 1B); a category without a letter stands after those with one.
const categoryRank = (code: string): string => code.replace(/^(\D+)(\d)$/, '$1$2~');

const leads: readonly string[] = ['Skin Corr.', 'Eye Dam.'];

/** Whether one result is more severe than another of the same class. */
export function isMoreSevere(a: ClassResult, b: ClassResult): boolean {
  if (a.outcome !== b.outcome) return outcomeRank[a.outcome] > outcomeRank[b.outcome];
  if (a.outcome !== 'classified' || b.outcome !== 'classified') return false;
  const aLeads = leads.includes(a.hazard.hazardClass);
  const bLeads = leads.includes(b.hazard.hazardClass);
  if (aLeads !== bLeads) return aLeads;
  return categoryRank(a.hazard.code) < categoryRank(b.hazard.code);
}

/** For each class the most severe result among the corners of the ranges (reading `range-end`). */
export function worstOf(corners: readonly (readonly ClassResult[])[]): ClassResult[] {
  const [first, ...others] = corners;
  return first!.map((result, i) =>
    others.reduce((worst, corner) => (isMoreSevere(corner[i]!, worst) ? corner[i]! : worst), result),
  );
}
