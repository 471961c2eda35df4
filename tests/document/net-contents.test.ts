import { describe, expect, it } from 'vitest';
import { netContents } from '../../src/document/net-contents.ts';
import { Exact } from '../../src/quantity/exact.ts';

// Factors of 16 CFR 500.19(a): 1 fl oz = 29.5735 mL, 1 gal = 3.78541 L, 1 lb = 453.592 g, 1 oz = 28.3495 g.
describe('net contents', () => {
  it.each([
    ['946', 'mL', '946 mL (32 fl oz)'],
    ['500', 'mL', '500 mL (16.9 fl oz)'],
    ['750', 'mL', '750 mL (25.3 fl oz)'],
    ['1', 'L', '1 L (33.8 fl oz)'],
    ['3.785', 'L', '3.785 L (1 gal)'],
    ['5', 'L', '5 L (1.32 gal)'],
    ['32', 'fl oz', '32 fl oz (946 mL)'],
    ['1', 'gal', '1 gal (3.78 L)'],
    ['5', 'gal', '5 gal (18.9 L)'],
    ['2', 'fl oz', '2 fl oz (59 mL)'],
    ['16', 'oz', '16 oz (453 g)'],
    ['1', 'kg', '1 kg (2.2 lb)'],
    ['2.27', 'kg', '2.27 kg (5 lb)'],
  ])('%s %s is declared as %s', (value, unit, text) => {
    expect(netContents({ value: Exact.decimal(value), unit, written: '' })?.text).toBe(text);
  });

  it('leaves other units alone', () => {
    expect(netContents({ value: Exact.decimal(3), unit: 'pieces', written: '3 pieces' })).toBeNull();
  });

  it('does not overstate by more than the declared figures', () => {
    for (let millilitres = 60; millilitres < 3700; millilitres += 7) {
      const { converted } = netContents({ value: Exact.decimal(millilitres), unit: 'mL', written: '' })!;
      const back = Number.parseFloat(converted) * 29.5735;
      expect(back, `${millilitres} mL (${converted})`).toBeLessThan(millilitres * 1.006);
      expect(back, `${millilitres} mL (${converted})`).toBeGreaterThan(millilitres * 0.985);
    }
  });
});
