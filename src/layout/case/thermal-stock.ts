import stock from '../../../templates/stocks/thermal-4x6.json' with { type: 'json' };
import type { Millimetres } from '../../quantity/length.ts';

/** What a stock of thermal labels asks; lengths in millimetres, text by the height of its capitals. */
export const thermalStock = stock;

/** A label of the stock as it lies before its reader. */
export type Format = 'portrait' | 'landscape' | 'large';

/** Width and height of a format before they are cut down to whole dots. */
export function formatSize(format: Format): { readonly width: Millimetres; readonly height: Millimetres } {
  if (format === 'large') return stock.large;
  const { width, height } = stock;
  return format === 'portrait' ? { width, height } : { width: height, height: width };
}
