import type { Dilution } from '../../record/record-blocks.ts';

const FLUID_OUNCES_IN_A_GALLON = 128;
const MILLILITERS_IN_A_LITER = 1000;

const rounded = (value: number): string => String(Number(value.toPrecision(value < 100 ? 2 : 3)));

/**
 * A line of directions on how to dilute, by volume, in what shops and homes measure with: fluid ounces to a US gallon,
 * milliliters to a liter of the diluent.
 */
export function dilution({ with: diluent, product, diluent: parts, written, use }: Dilution): string {
  const share = product.value / parts.value;
  const amounts = `${rounded(share * FLUID_OUNCES_IN_A_GALLON)} fl oz to 1 gal, ${rounded(share * MILLILITERS_IN_A_LITER)} mL to 1 L of ${diluent}`;
  return `${use ? `${use.charAt(0).toUpperCase()}${use.slice(1)}` : 'Dilute'} ${written}: ${amounts}`;
}
