import type { Quantity } from '../../record/product-record.ts';
import { netContents } from '../net-contents.ts';
import { fill } from './fill.ts';
import { sheetForm } from './form.ts';
import type { SheetInput } from './input.ts';

type Basis = Pick<SheetInput, 'classification'>;

const customary = ({ classification }: Basis): boolean => sheetForm(classification.basis.id).customaryUnits;

const fahrenheit = (celsius: number): number => (celsius * 9) / 5 + 32;
const celsius = (value: number): number => ((value - 32) * 5) / 9;

/** Temperatures with their degree sign: `46 C` gives `46 °C (115 °F)` where the law of the sheet is that of the United States, else `46 °C`. */
export function temperatures(text: string, input: Basis): string {
  const both = customary(input);
  return text.replace(/(-?\d+(?:\.\d+)?)\s*°?\s*([CF])\b(?!\.)/gu, (_, number: string, scale: string) => {
    const value = Number(number);
    if (!both) return `${scale === 'C' ? number : Math.round(celsius(value))} °C`;
    const other = scale === 'C' ? fahrenheit(value) : celsius(value);
    return `${number} °${scale} (${Math.round(other)} °${scale === 'C' ? 'F' : 'C'})`;
  });
}

/** A phrase with a temperature: `{value}` as it is printed, and `{fahrenheit}` in parentheses where the sheet has both scales. */
export const inScales = (phrase: string, value: number, printed: string, input: Basis): string =>
  fill(customary(input) ? phrase : phrase.replace(' ({fahrenheit} °F)', ''), {
    value: printed,
    fahrenheit: Math.round(fahrenheit(value)),
  });

/** Net contents as the record has them, or in metric units. */
export const contentsOf = (contents: Quantity, input: Basis): string =>
  customary(input) ? contents.written : (netContents(contents)?.metric ?? contents.written);
