import type { SpokenStatements } from './spoken.ts';

/** Languages beside English whose statements of the law are held. */
export const spokenLanguages = ['es'] as const;
export type SpokenLanguage = (typeof spokenLanguages)[number];

const files: Readonly<Record<SpokenLanguage, () => Promise<{ readonly statements: unknown }>>> = {
  es: () => import('./es.ts'),
};

/** The statements of the law in a language; null for English, whose texts each basis has of its own. */
export async function loadSpoken(language: string): Promise<SpokenStatements | null> {
  const file = files[language as SpokenLanguage];
  return file ? ((await file()).statements as SpokenStatements) : null;
}
