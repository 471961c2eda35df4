import type { Fact } from '../../transport/fact.ts';

/** Values of a fact. */
export type Values = Fact['values'];

/** A value as words; a list with `and`. */
export const text = (value: Values[string] | undefined): string => {
  if (value === null || value === undefined) return 'unknown';
  if (typeof value === 'number') return String(Number(value.toPrecision(6)));
  return typeof value === 'string' ? value : list(value);
};

/** `a, b and c`. */
export const list = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? 'none') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

/** How many stand in a list. */
export const count = (value: Values[string] | undefined): number => (Array.isArray(value) ? value.length : 0);

/** `Division 6.1`, `Class 8`. */
export const classWord = (value: Values[string] | undefined): string => {
  const name = text(value);
  if (name === 'Comb liq') return 'combustible liquid';
  return name.includes('.') ? `Division ${name}` : `Class ${name}`;
};

/** `packing group II`. */
export const group = (value: Values[string] | undefined): string =>
  value === null || value === undefined ? 'no packing group' : `packing group ${text(value)}`;

/** Words of a fact from a table by its id. */
export function say(
  table: Readonly<Record<string, (values: Values) => string>>,
  { id, values }: Fact,
): string {
  const words = table[id];
  if (!words) throw new Error(`no words for ${id}`);
  return words(values);
}
