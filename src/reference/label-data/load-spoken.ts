import type { OtherLanguage } from '../../notation/languages.ts';
import type { SpokenStatements } from './spoken.ts';

const files: Readonly<Record<OtherLanguage, () => Promise<{ readonly statements: unknown }>>> = {
  es: () => import('./es.ts'),
};

/** The statements of the law in a language; null for English, whose texts each basis has of its own. */
export async function loadSpoken(language: string): Promise<SpokenStatements | null> {
  const file = files[language as OtherLanguage];
  return file ? ((await file()).statements as SpokenStatements) : null;
}
