import type { SpokenWords } from '../spoken-words.ts';

const NAMES: Readonly<Record<string, string>> = { en: 'English', es: 'Spanish' };
/** What a language is called. */
export const languageName = (language: string): string => NAMES[language] ?? language;
const named = languageName;

/** What is told of a document in another language. */
export const spoken: SpokenWords = {
  untranslated: (keys, names, language) =>
    [
      `texts of the record stand untranslated on the ${named(language)} document`,
      [
        ...(keys.length > 0 ? [keys.map(key => `\`${key}\``).join(', ')] : []),
        ...(names.length > 0 ? [`names of ingredients: ${names.join('; ')}`] : []),
      ].join('; '),
    ].join(': '),
  translationsHint: language =>
    `give them under \`translations: {${language}: {…}}\`, with the keys of the record and \`ingredients: {CAS: name}\``,
  inEnglish: (codes, language) =>
    `no ${named(language)} text is held of ${codes.join(', ')}: ${codes.length === 1 ? 'it stays' : 'they stay'} in English, marked as English`,
  fromMemory: (codes, language) =>
    `the ${named(language)} text of ${codes.join(', ')} is from memory: compare it with the Official Journal`,
  oneCopy: (codes, language) =>
    `the ${named(language)} text was read in one copy of the consolidated law: ${codes.join(', ')}`,
  sheetInEnglish:
    'the law asks for the sheet in English (29 CFR 1910.1200(g)(2)); this one is a translation beside it and says so on its first page',
  labelInEnglish: language =>
    `the law asks for the label in English and lets other languages be added: ${named(language)} stands after it`,
  noRoom: language => `${named(language)} finds no room beside the English text on this die, and is left off`,
  noLabel: (language, purpose) =>
    `a ${purpose} is drafted in English alone: it has no ${named(language)} text`,
};
