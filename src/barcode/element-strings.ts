import { gs1CheckDigit } from '../quantity/check-digit.ts';
import data from './application-identifiers.json' with { type: 'json' };

/** A GS1 application identifier of the table. */
export type Identifier = keyof typeof data.identifiers;

/** An application identifier with its value: `10` and `L2026A`. */
export interface ElementString {
  readonly ai: Identifier;
  readonly value: string;
}

/** What is wrong with an element string. */
export interface ElementFault {
  readonly element: ElementString;
  readonly problem: 'length' | 'characters' | 'check-digit' | 'date';
  /** Characters that may not stand in it, each once. */
  readonly characters: string;
  /** The most characters that it may have. */
  readonly most: number;
}

const signs = new Set(data.characterSet.signs);
const inSet82 = (character: string): boolean => /[A-Za-z0-9]/.test(character) || signs.has(character);

/** Data title that is printed beside the value, in English (GS1 General Specifications 3.2). */
export const dataTitle = (ai: Identifier): string => data.identifiers[ai].title;

/** A calendar date as application identifiers write it: year, month, day in two digits each. @param date YYYY-MM-DD */
export const elementDate = (date: string): string => date.slice(2).replaceAll('-', '');

/** What is wrong with element strings; empty where they can be encoded. */
export function elementFaults(elements: readonly ElementString[]): ElementFault[] {
  return elements.flatMap(element => {
    const { characters: most, fixed, kind } = data.identifiers[element.ai];
    const { value } = element;
    const allowed = kind === 'text' ? inSet82 : (character: string) => /\d/.test(character);
    const characters = [...new Set(value)].filter(character => !allowed(character)).join('');
    const fault = (problem: ElementFault['problem']) => [{ element, problem, characters, most }];
    if (characters !== '') return fault('characters');
    if (value.length === 0 || value.length > most || (fixed && value.length !== most)) return fault('length');
    if (kind === 'key' && gs1CheckDigit(value.slice(0, -1)) !== Number(value.at(-1)))
      return fault('check-digit');
    if (kind === 'date' && !isDate(value)) return fault('date');
    return [];
  });
}

/** Day 00 stands for a whole month (GS1 General Specifications 3.4.2). */
function isDate(value: string): boolean {
  const [month, day] = [Number(value.slice(2, 4)), Number(value.slice(4))];
  if (month < 1 || month > 12) return false;
  // The century is left open: 29 February is taken where either could have it.
  return day <= new Date(Date.UTC(2000 + Number(value.slice(0, 2)), month, 0)).getUTCDate();
}

/** Those of a predefined length first, so that as few separators as possible are needed (GS1 General Specifications 7.8.4). */
export const inSymbolOrder = (elements: readonly ElementString[]): ElementString[] => [
  ...elements.filter(({ ai }) => data.identifiers[ai].fixed),
  ...elements.filter(({ ai }) => !data.identifiers[ai].fixed),
];

/** Element strings as printed under the bars: `(01)10614141000415(17)271231(10)L2026A`. */
export const bracketed = (elements: readonly ElementString[]): string =>
  elements.map(({ ai, value }) => `(${ai})${value}`).join('');

/** Number of data characters, separators included (GS1 General Specifications 5.4.4.6 counts both). */
export const dataCharacters = (elements: readonly ElementString[]): number =>
  elements.reduce(
    (sum, { ai, value }, at) =>
      sum + ai.length + value.length + (data.identifiers[ai].fixed || at === elements.length - 1 ? 0 : 1),
    0,
  );
