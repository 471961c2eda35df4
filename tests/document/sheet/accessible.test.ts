import { describe, expect, it } from 'vitest';
import { sheetDocument, sheetHtml } from '../../../src/document/sheet.ts';
import css from '../../../templates/sheets/sheet-css.json' with { type: 'json' };
import { accessibilityFaults } from '../../support/web-page.ts';
import { inputAround, sheetInput, sheetTemplate } from './sheet-input.ts';
import { tenProducts } from './ten-products.ts';

describe('the web page', () => {
  it('has no fault that axe finds without a screen', async () => {
    const template = await sheetTemplate();
    const inputs = [
      await sheetInput('templates/demo/patio-cleaner.yaml'),
      await inputAround(tenProducts['hydrocarbon polish']!),
    ];
    for (const input of inputs)
      expect(await accessibilityFaults(sheetHtml(sheetDocument(input, template)))).toEqual([]);
  });

  // WCAG 2.2, 1.4.3: 4.5 to 1 for text; relative luminance as it defines it.
  it('has text of enough contrast', () => {
    const channel = (value: number) =>
      value / 255 <= 0.04045 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4;
    const luminance = (hex: string) => {
      const digits =
        hex.length === 4 ? [...hex.slice(1)].map(digit => digit + digit) : hex.slice(1).match(/../gu)!;
      const [red, green, blue] = digits.map(digit => channel(Number.parseInt(digit, 16)));
      return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
    };
    const contrast = (one: string, other: string) => {
      const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b);
      return (high! + 0.05) / (low! + 0.05);
    };
    expect(contrast('#000', '#fff')).toBeCloseTo(21, 5);
    const pairs = css.rules.flatMap(rule =>
      [...rule.matchAll(/\{[^{}]*?(?<![-\w])color: (#[\da-f]{3,6})[^{}]*\}/gu)].map(([block, color]) => [
        color!,
        /background: (#[\da-f]{3,6})/u.exec(block)?.[1] ?? '#fff',
      ]),
    );
    expect(pairs.length).toBeGreaterThan(3);
    for (const [color, background] of pairs)
      expect(contrast(color!, background!)).toBeGreaterThanOrEqual(4.5);
  });
});
