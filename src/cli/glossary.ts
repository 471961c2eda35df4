import { readPackageFile } from '../environment/package-files.ts';

/** A word of the trade. */
export interface GlossaryEntry {
  readonly term: string;
  /** Other words for it. */
  readonly also?: readonly string[];
  readonly means: string;
  /** Where the law or a standard defines it. */
  readonly cite?: string;
}

/** The words that `labelwright help` explains, in order of the alphabet. */
export const openGlossary = (): readonly GlossaryEntry[] =>
  JSON.parse(readPackageFile('templates', 'strings', 'en', 'glossary.json').toString('utf8')).entries;

const plain = (text: string): string => text.toLowerCase().replace(/[\s_-]+/g, ' ');

/** The entry of a word, in singular or plural, with or without dashes. */
export function findTerm(glossary: readonly GlossaryEntry[], word: string): GlossaryEntry | null {
  const asked = [plain(word), plain(word).replace(/s$/, ''), plain(word).replace(/ies$/, 'y')];
  const names = ({ term, also = [] }: GlossaryEntry) => [term, ...also].map(plain);
  return glossary.find(entry => names(entry).some(name => asked.includes(name))) ?? null;
}

/** The entry as a terminal shows it. */
export const entryText = ({ term, also = [], means, cite }: GlossaryEntry): string =>
  [
    `${term}${also.length > 0 ? ` (${also.join(', ')})` : ''}`,
    `  ${means}`,
    ...(cite ? [`  ${cite}`] : []),
    '',
  ].join('\n');
