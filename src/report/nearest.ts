import { distance } from 'fastest-levenshtein';

// Beyond a third of its letters a word is another word, not a slip.
const tolerated = (word: string): number => Math.max(1, Math.floor(word.length / 3));

/** The known word nearest to what was written, or null where none is near. */
export function nearest(written: string, known: readonly string[]): string | null {
  const word = written.toLowerCase().replace(/[_\s]+/g, '-');
  let best: string | null = null;
  let least = tolerated(word) + 1;
  for (const candidate of known) {
    const steps = distance(word, candidate.toLowerCase());
    if (steps < least) [best, least] = [candidate, steps];
  }
  return best;
}
