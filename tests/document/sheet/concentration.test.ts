import { describe, expect, it } from 'vitest';
import { percentText, prescribedRange } from '../../../src/document/sheet/concentration.ts';
import { Exact } from '../../../src/quantity/exact.ts';
import { typographic } from '../../../src/quantity/print.ts';

const at = (percent: number) => prescribedRange({ low: percent, high: percent });
const between = (low: number, high: number) => prescribedRange({ low, high });

// 29 CFR 1910.1200(i)(1)(iv)(A)-(M) and (v), text of 20 May 2024.
describe('prescribed concentration ranges', () => {
  it('takes the narrowest that holds the concentration', () => {
    expect(at(0.7)).toEqual({ low: 0.1, high: 1 });
    expect(at(1.2)).toEqual({ low: 0.5, high: 1.5 });
    expect(at(6)).toEqual({ low: 3, high: 7 });
    expect(at(12)).toEqual({ low: 7, high: 13 });
    expect(at(25)).toEqual({ low: 10, high: 30 });
    expect(at(50)).toEqual({ low: 45, high: 70 });
    expect(at(82)).toEqual({ low: 65, high: 85 });
    expect(at(100)).toEqual({ low: 80, high: 100 });
  });

  it('joins two consecutive ranges from (A) to (G) where no single one holds it', () => {
    expect(between(0.3, 1.2)).toEqual({ low: 0.1, high: 1.5 });
    expect(between(2, 6)).toEqual({ low: 1, high: 7 });
    expect(between(6, 12)).toEqual({ low: 5, high: 13 });
    expect(between(9, 20)).toEqual({ low: 7, high: 30 });
  });

  it('has none below 0.1 %, across more than two ranges, or above 30 % where none holds it', () => {
    expect(at(0.05)).toBeNull();
    expect(between(0.2, 12)).toBeNull();
    expect(between(35, 90)).toBeNull();
  });
});

describe('concentrations of the formula', () => {
  it('prints exact percentages and ranges', () => {
    expect(percentText(Exact.decimal('4.10'), Exact.decimal('4.10'))).toBe('4.1');
    expect(percentText(Exact.decimal('1'), Exact.decimal('2'))).toBe('1 to 2');
  });

  it('keeps three significant figures, as a batch of 945 kg is not weighed more exactly', () => {
    expect(percentText(Exact.decimal('5.02646'), Exact.decimal('5.02646'))).toBe('5.03');
    expect(percentText(Exact.decimal('0.0050004'), Exact.decimal('0.0050004'))).toBe('0.005');
  });
});

describe('arithmetic on the sheet', () => {
  it('is shortened to four significant figures', () => {
    expect(typographic.show(5.02646)).toBe('5.026');
    expect(typographic.show(0.0000001)).toBe('0.0000001');
  });

  it('never shows a limit as met that is not', () => {
    expect(typographic.beside(4.99996, 5)).toBe('4.99996');
  });
});
