import table from '../../hazard-data/hazard-wordings.json' with { type: 'json' };
import { hazardClasses } from './classes.ts';
import type { TransientEffect } from './hazard.ts';

/** A word of a text, with the part between punctuation marks that it stands in. */
export interface Token {
  readonly word: string;
  readonly part: number;
}

/** A way to word a hazard class. */
export interface Wording {
  readonly words: readonly string[];
  /** The class meant, by the first digit of the category where a heading covers two. */
  readonly hazardClass: (category: string | null) => string | null;
}

const american = (text: string): string =>
  text
    .replace(/is(ation|ing|ed|er|ers)\b/g, 'iz$1')
    .replace(/vapour/g, 'vapor')
    .replace(/liquify|liquified/g, 'liquefied');

/** The words of a text in lower case and American spelling. Points stay inside numbers, hyphens inside words. */
export function tokensOf(text: string): readonly Token[] {
  return text.split(/[;,:()[\]{}/–—|•]|\s-\s?|-\s/).flatMap((piece, part) =>
    american(piece.toLowerCase())
      .replace(/([a-z])\.(?=\d)/g, '$1. ')
      .replace(/\bacute (oral|dermal|inhalation) (toxic\w*)/g, 'acute $2 $1')
      .split(/[^\p{L}\p{N}.+-]+/u)
      .map(word => word.replace(/^[.+-]+|[.+-]+$/g, ''))
      .filter(word => word !== '')
      .map(word => ({ word, part })),
  );
}

const split = (text: string): readonly string[] => tokensOf(text).map(({ word }) => word);

const entries = table.wordings as readonly {
  readonly class?: string;
  readonly byCategory?: Readonly<Record<string, string>>;
  readonly words: readonly string[];
}[];

/** All wordings, the abbreviations of Annex VI too, the longest first. */
export const wordings: readonly Wording[] = [
  ...hazardClasses.map(({ class: name }) => ({ words: split(name), hazardClass: () => name })),
  ...entries.flatMap(({ class: name, byCategory, words }) =>
    words.map(text => ({
      words: split(text),
      hazardClass: (category: string | null) =>
        name ?? (category === null ? null : (byCategory?.[category.slice(0, 1)] ?? null)),
    })),
  ),
].sort((a, b) => b.words.length - a.words.length || b.words.join(' ').length - a.words.join(' ').length);

const phrases = <T extends string>(group: Readonly<Record<string, T>>) =>
  Object.entries(group)
    .map(([text, meaning]) => ({ words: split(text), meaning }))
    .sort((a, b) => b.words.length - a.words.length);

/** Words for the groups of gases under pressure. */
export const groups = phrases(table.groups);

/** Words for the effects of STOT SE 3. */
export const effects = phrases(table.effects as Readonly<Record<string, TransientEffect>>);

/** Words that say nothing of their own beside a class. */
export const fillers: ReadonlySet<string> = new Set(table.fillers);

const statements = Object.entries(table.statements as Readonly<Record<string, string>>)
  .map(([text, code]) => ({ text, code }))
  .sort((a, b) => b.text.length - a.text.length);

/** A text with its H-code in place of the text of a hazard statement that it begins with. */
export function withStatementCode(text: string): string {
  const plain = american(text.toLowerCase());
  const found = statements.find(
    ({ text: statement }) =>
      plain.startsWith(statement) && !/^[\p{L}\p{N}-]/u.test(plain.slice(statement.length)),
  );
  const rest = found ? plain.slice(found.text.length) : '';
  // Words behind it that are no category make it another statement.
  return found && /^\s*\.?\s*(?:[([,;:–-]?\s*(?:cat(?:egory|\.)?\s*\d[a-c]?)?\s*[)\]]?\s*)$/.test(rest)
    ? `${found.code}${rest}`
    : text;
}
