import { distance } from 'fastest-levenshtein';

// Beyond a third of its letters a word is another word, not a slip.
const tolerated = (word: string): number => Math.max(1, Math.floor(word.length / 3));

/** The known word nearest to what was written, or null where none is near. */
export function nearest(written: string, known: readonly string[]): string | null {
  const word = written.toLowerCase().replace(/[_\s]+/g, '-');
  let best: string | null = null;
  let least = tolerated(word) + 1;
  for (const candidate of known) {
    const steps = isSwapped(word, candidate.toLowerCase()) ? 1 : distance(word, candidate.toLowerCase());
    if (steps < least) [best, least] = [candidate, steps];
  }
  return best;
}

/** Whether two neighbouring letters changed over make one word of the other. */
function isSwapped(word: string, candidate: string): boolean {
  if (word.length !== candidate.length) return false;
  const at = [...word].findIndex((letter, i) => letter !== candidate[i]);
  const swapped = word.slice(0, at) + (word[at + 1] ?? '') + (word[at] ?? '') + word.slice(at + 2);
  return at >= 0 && swapped === candidate;
}
