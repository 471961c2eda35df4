import type { Language, OtherLanguage } from '../notation/languages.ts';
import { en } from './en/index.ts';
import type { Words } from './words.ts';

const others: Readonly<Record<OtherLanguage, () => Promise<Words>>> = {
  es: async () => (await import('./es/index.ts')).es,
};

/** The words of a language; another than English is loaded when it is asked for. */
export const wordsOf = async (language: Language): Promise<Words> =>
  language === 'en' ? en : others[language]();
