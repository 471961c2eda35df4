import type { Provision } from '../../classify/facts/provision.ts';
import { cites as english } from '../en/cites.ts';

/** Words with which the data cite a law, in Spanish. */
const WORDS: readonly (readonly [RegExp, string])[] = [
  [/\bAnnex\b/gu, 'anexo'],
  [/\bArticles?\b/gu, 'artículo'],
  [/\bTables\b/gu, 'cuadros'],
  [/\bTable\b/gu, 'cuadro'],
  [/\bNotes\b/gu, 'notas'],
  [/\bNote\b/gu, 'nota'],
  [/\bnotes\b/gu, 'notas'],
  [/\bnote\b/gu, 'nota'],
  [/\bPart\b/gu, 'parte'],
  [/\bFigure\b/gu, 'figura'],
  [/\band\b/gu, 'y'],
  [/\bto\b/gu, 'a'],
  [/\bor\b/gu, 'o'],
  [/\bUN GHS\b/gu, 'SGA'],
  [/\bfrom memory\b/gu, 'de memoria'],
];

/** A paragraph as the data cite it, its words in Spanish: `CLP anexo I 3.2.3.3.4`. */
export const citeWords = (text: string): string =>
  WORDS.reduce((sofar, [word, said]) => sofar.replace(word, said), text);

/** Paragraphs, the instrument named where it changes. */
export const cites = (provisions: readonly Provision[], known: readonly string[] = []): string =>
  citeWords(english(provisions, known));
