import type { Classification } from '../classify/classification.ts';

/** What label and sheet must show as open: silence would read as harmless (29 CFR 1910.1200(d)(2)). */
export interface OpenOnDocuments {
  /** Classes not decided although an ingredient has the hazard or a neighbouring one. */
  readonly undecided: readonly string[];
  /** Properties measured on another formula, by their key in the record. */
  readonly stale: readonly string[];
  /** The pH of a mixture with a strong acid or base, which decides its corrosion, was not measured. */
  readonly phMissing: boolean;
}

/** What label and sheet must show as open. */
export function openOnDocuments({ warnings }: Pick<Classification, 'warnings'>): OpenOnDocuments {
  const undecided = warnings.flatMap(found => (found.id === 'undecided-with-cause' ? found.classes : []));
  const stale = warnings.flatMap(found =>
    found.id === 'stale-measurement' ? found.properties.map(({ property }) => property) : [],
  );
  const phMissing = warnings.some(({ id }) => id === 'ph-missing');
  return { undecided: [...new Set(undecided)], stale, phMissing };
}
