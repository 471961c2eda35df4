import { en } from './en/index.ts';
import type { Words } from './words.ts';

/** Languages of documents, English first. */
export const languages = ['en', 'es'] as const;
export type Language = (typeof languages)[number];

const others: Readonly<Record<Exclude<Language, 'en'>, () => Promise<Words>>> = {
  es: async () => (await import('./es/index.ts')).es,
};

/** The words of a language; another than English is loaded when it is asked for. */
export const wordsOf = async (language: Language): Promise<Words> =>
  language === 'en' ? en : others[language]();
