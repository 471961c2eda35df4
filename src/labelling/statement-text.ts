import type { StatementField, StatementText } from '../reference/label-data/statements.ts';

/** Chosen options or words of the maker, by field. */
export type FieldWords = Readonly<Record<string, readonly string[]>>;

/** A filled statement, or the fields that have no words. */
export type Filled = { readonly text: string } | { readonly missing: readonly string[] };

/**
 * Fills the fields of a statement (29 CFR 1910.1200 App. C, C.2.2.1, C.2.4.2, C.2.4.3, C.2.4.5): the options or words
 * given for a field, else its default; then a capital at the start.
 */
export function fillStatement({ text, fields = {} }: StatementText, words: FieldWords = {}): Filled {
  const missing: string[] = [];
  const filled = Object.entries(fields).reduce((sofar, [name, field]) => {
    if (!sofar.includes(`{${name}}`)) return sofar;
    const chosen = words[name] ?? field.default;
    if (field.required && chosen.length === 0) missing.push(name);
    return sofar.replaceAll(`{${name}}`, fieldText(field, chosen));
  }, text);
  return missing.length > 0 ? { missing } : { text: capitalized(filled) };
}

function fieldText(field: StatementField, chosen: readonly string[]): string {
  const keys = field.options.map(({ key }) => key);
  const own = chosen.filter(word => !keys.includes(word));
  const texts = [
    ...field.options.filter(({ key }) => chosen.includes(key)).map(({ text }) => text),
    ...(field.named ? [] : own),
  ];
  const { between = ', ' } = field;
  const last = field.lastBefore?.[texts.at(-1) ?? ''] ?? field.last ?? between;
  if (field.named && own.length > 0) return field.named.replace('{words}', joined(own, between, last));
  const text = joined(texts, between, last);
  return text === '' ? '' : text + (field.after ?? '');
}

/** `a, b and c` */
export const joined = (words: readonly string[], between: string, last: string): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(between)}${last}${words[words.length - 1]}`;

/** With a capital at the start. */
export const capitalized = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The language of a statement as it stands on a document, where that is another one. */
export const spokenIn = ({ language }: StatementText): { readonly language?: string } =>
  language === undefined ? {} : { language };
