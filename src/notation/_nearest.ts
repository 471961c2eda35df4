import { closest, distance } from 'fastest-levenshtein';

/** The known word nearest to what was written, or null where none is near enough to be meant. */
export function nearest(written: string, known: readonly string[]): string | null {
  if (known.length === 0 || written === '') return null;
  const folded = new Map(known.map(word => [word.toLowerCase(), word]));
  const best = closest(written.toLowerCase(), [...folded.keys()]);
  const edits = distance(written.toLowerCase(), best);
  return edits <= Math.max(2, Math.ceil(best.length / 2)) ? folded.get(best)! : null;
}
