import type { OpenOnDocuments } from '../../labelling/open-on-documents.ts';

/** `flash-point` as a word */
const said = (key: string): string => key.replaceAll('-', ' ');

/** Notices of a draft label on what is open, the longest first; none where nothing is. */
export function draftNotices({ undecided, stale, phMissing }: OpenOnDocuments): readonly string[] {
  const points = undecided.length + stale.length + (phMissing ? 1 : 0);
  if (points === 0) return [];
  const parts = [
    undecided.length > 0 ? `Not decided: ${undecided.join(', ')}` : '',
    stale.length > 0 ? `Measured on another formula: ${stale.map(said).join(', ')}` : '',
    phMissing ? 'pH not measured' : '',
  ].filter(Boolean);
  const open = points === 1 ? '1 hazard point open' : `${points} hazard points open`;
  return [
    `DRAFT for qualified review. ${parts.join('. ')}`,
    `DRAFT for qualified review. ${open}`,
    `DRAFT: ${open}`,
  ];
}
